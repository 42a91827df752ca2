-- A formula: where it stands now. Its revisions hold what it was at any time.
CREATE TABLE formulas (
    id TEXT NOT NULL PRIMARY KEY,
    display_name TEXT NOT NULL,
    -- The name in small letters, to look for words in.
    search_text TEXT NOT NULL,
    newest INTEGER NOT NULL,
    published INTEGER,
    -- Goes up with every change, of whatever kind; the etag is made of it and of what it is about.
    edition INTEGER NOT NULL,
    etag TEXT NOT NULL,
    created TEXT NOT NULL,
    updated TEXT NOT NULL,
    deleted TEXT
);

CREATE INDEX formulas_in_use ON formulas (id) WHERE deleted IS NULL;

CREATE INDEX formulas_published ON formulas (id) WHERE published IS NOT NULL;

-- A revision never changes. The document is the formula as JSON.
CREATE TABLE revisions (
    formula TEXT NOT NULL REFERENCES formulas (id),
    number INTEGER NOT NULL,
    document TEXT NOT NULL,
    note TEXT NOT NULL,
    goals TEXT NOT NULL,
    created TEXT NOT NULL,
    PRIMARY KEY (formula, number)
);

-- Requests that were done, so that one that is sent again is done once.
CREATE TABLE requests (
    id TEXT NOT NULL PRIMARY KEY,
    fingerprint TEXT NOT NULL,
    name TEXT NOT NULL,
    done TEXT NOT NULL
);

CREATE INDEX requests_by_time ON requests (done);
