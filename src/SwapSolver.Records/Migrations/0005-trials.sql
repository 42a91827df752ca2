-- What was baked and measured. The document is the trial as JSON.
CREATE TABLE trials (
    formula TEXT NOT NULL,
    number INTEGER NOT NULL,
    revision INTEGER NOT NULL,
    document TEXT NOT NULL,
    created TEXT NOT NULL,
    PRIMARY KEY (formula, number),
    FOREIGN KEY (formula, revision) REFERENCES revisions (formula, number)
);

-- What this kitchen chose not to go by: a fact that was learned and is turned off, or up to which trial it was forgotten.
CREATE TABLE learned_choices (
    fact TEXT NOT NULL PRIMARY KEY,
    is_off INTEGER NOT NULL,
    forgotten_before TEXT NOT NULL
);
CREATE INDEX trials_by_time ON trials (created);
