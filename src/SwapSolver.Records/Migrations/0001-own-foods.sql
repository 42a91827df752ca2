-- Foods that this kitchen added or imported. The document is the stated food as JSON.
CREATE TABLE foods (
    id TEXT NOT NULL PRIMARY KEY,
    document TEXT NOT NULL
);

-- What this kitchen measured of an ingredient: it goes before the shipped figure.
CREATE TABLE measured_facts (
    ingredient TEXT NOT NULL,
    fact TEXT NOT NULL,
    low REAL NOT NULL,
    typical REAL NOT NULL,
    high REAL NOT NULL,
    method TEXT NOT NULL,
    PRIMARY KEY (ingredient, fact)
);

-- One row: goes up with every change, so that a running service sees what another process wrote.
CREATE TABLE change_counter (
    changes INTEGER NOT NULL
);

INSERT INTO change_counter (changes) VALUES (1);
