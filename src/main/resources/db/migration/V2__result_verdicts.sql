-- The verdicts of each bay's results, in short: what comparisons and histories read instead of the
-- results themselves. Derived: a verification holds each row against its results, and where a row is
-- missing the results are read.
CREATE TABLE result_verdicts (
    organisation text  NOT NULL,
    result_hash  bytea NOT NULL,
    bytes        bytea NOT NULL,
    PRIMARY KEY (organisation, result_hash),
    FOREIGN KEY (organisation, result_hash) REFERENCES content (organisation, hash)
);

CREATE TRIGGER append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON result_verdicts
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
