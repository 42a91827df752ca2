-- Keys to this kitchen. Of a key only a salted hash is kept.
CREATE TABLE api_keys (
    id TEXT NOT NULL PRIMARY KEY,
    display_name TEXT NOT NULL,
    role TEXT NOT NULL,
    salt TEXT NOT NULL,
    hash TEXT NOT NULL,
    created TEXT NOT NULL,
    revoked TEXT
);
