-- What a spoon, cup or piece weighs: it goes before the shipped weight of the same measure.
CREATE TABLE household_weights (
    ingredient TEXT NOT NULL,
    measure TEXT NOT NULL,
    amount TEXT NOT NULL,
    grams REAL NOT NULL,
    source TEXT NOT NULL,
    PRIMARY KEY (ingredient, measure, amount)
);
