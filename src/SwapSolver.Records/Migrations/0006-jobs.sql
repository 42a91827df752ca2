-- Work that goes on by itself. The document is what was asked, as JSON. The counts go up in the transaction that writes what
-- they count; 'turn' goes up when a job is worked on, so that several take turns.
CREATE TABLE jobs (
    id TEXT NOT NULL PRIMARY KEY,
    display_name TEXT NOT NULL,
    document TEXT NOT NULL,
    state TEXT NOT NULL,
    shards INTEGER NOT NULL,
    open_shards INTEGER NOT NULL,
    is_counted INTEGER NOT NULL,
    items INTEGER NOT NULL,
    done INTEGER NOT NULL,
    failed INTEGER NOT NULL,
    turn INTEGER NOT NULL,
    created TEXT NOT NULL,
    ended TEXT
);

CREATE INDEX jobs_by_time ON jobs (created, id);

-- A part of a job, worked on by one process at a time. 'fence' goes up with every process that takes it, and whoever took it
-- before can write no more; 'written' is how many of its items have been.
CREATE TABLE job_shards (
    job TEXT NOT NULL REFERENCES jobs (id),
    number INTEGER NOT NULL,
    kind TEXT NOT NULL,
    document TEXT NOT NULL,
    first_item INTEGER NOT NULL,
    items INTEGER NOT NULL,
    written INTEGER NOT NULL,
    state TEXT NOT NULL,
    fence INTEGER NOT NULL,
    attempts INTEGER NOT NULL,
    holder TEXT NOT NULL,
    held_until INTEGER NOT NULL,
    PRIMARY KEY (job, number)
);

CREATE INDEX job_shards_open ON job_shards (job, number) WHERE state <> 'DONE';

-- What became of an item. It is written once; 'place' counts the results of a job in the order in which they were written.
CREATE TABLE job_results (
    job TEXT NOT NULL REFERENCES jobs (id),
    item INTEGER NOT NULL,
    place INTEGER NOT NULL,
    failed INTEGER NOT NULL,
    document TEXT NOT NULL,
    PRIMARY KEY (job, item)
);

CREATE UNIQUE INDEX job_results_by_place ON job_results (job, place);

-- One row: tells these records from any other, so that what others remember of them is not taken for that of others.
CREATE TABLE records_identity (
    id TEXT NOT NULL PRIMARY KEY
);
