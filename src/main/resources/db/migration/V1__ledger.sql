-- The ledger: rows are added and never changed. Everything lives in the schema "ledger", which the
-- migration login owns. Hashes are SHA-256, 32 bytes.

CREATE TABLE project (
    organisation text           NOT NULL,
    project_id   uuid           NOT NULL,
    name         text           NOT NULL,
    created_at   timestamptz(6) NOT NULL,
    created_by   text           NOT NULL,
    PRIMARY KEY (organisation, project_id)
);

CREATE INDEX project_in_order ON project (organisation, created_at, project_id);

-- Canonical JSON of a bay, of a bay's results, or of what is left of a document or of results when
-- their bays are taken out. Stored once, however many revisions share it.
CREATE TABLE content (
    organisation text  NOT NULL,
    hash         bytea NOT NULL,
    bytes        bytea NOT NULL,
    PRIMARY KEY (organisation, hash),
    CONSTRAINT content_has_its_hash CHECK (hash = sha256(bytes))
);

CREATE TABLE revision (
    organisation   text           NOT NULL,
    project_id     uuid           NOT NULL,
    number         integer        NOT NULL CHECK (number >= 1),
    previous_hash  bytea          NOT NULL CHECK (length(previous_hash) = 32),
    hash           bytea          NOT NULL CHECK (length(hash) = 32),
    author         text           NOT NULL,
    recorded_by    text           NOT NULL,
    reason         text           NOT NULL,
    engine_version text           NOT NULL,
    recorded_at    timestamptz(6) NOT NULL,
    verdict        text           NOT NULL,
    document_shell bytea          NOT NULL,
    result_shell   bytea          NOT NULL,
    PRIMARY KEY (organisation, project_id, number),
    -- one successor for each revision: a chain, never a tree
    CONSTRAINT revision_has_one_successor UNIQUE (organisation, project_id, previous_hash),
    FOREIGN KEY (organisation, project_id) REFERENCES project,
    FOREIGN KEY (organisation, document_shell) REFERENCES content,
    FOREIGN KEY (organisation, result_shell) REFERENCES content
);

CREATE TABLE revision_bay (
    organisation text    NOT NULL,
    project_id   uuid    NOT NULL,
    number       integer NOT NULL,
    position     integer NOT NULL CHECK (position >= 0),
    bay_id       text    NOT NULL,
    input_hash   bytea   NOT NULL,
    result_hash  bytea   NOT NULL,
    PRIMARY KEY (organisation, project_id, number, position),
    FOREIGN KEY (organisation, project_id, number) REFERENCES revision,
    FOREIGN KEY (organisation, input_hash) REFERENCES content,
    FOREIGN KEY (organisation, result_hash) REFERENCES content
);

-- The revision that a request with an Idempotency-Key recorded.
CREATE TABLE idempotency (
    organisation text    NOT NULL,
    recorded_by  text    NOT NULL,
    project_id   uuid    NOT NULL,
    key          text    NOT NULL,
    body_hash    bytea   NOT NULL CHECK (length(body_hash) = 32),
    number       integer NOT NULL,
    PRIMARY KEY (organisation, recorded_by, project_id, key),
    FOREIGN KEY (organisation, project_id, number) REFERENCES revision
);

-- Besides the missing rights: not even the owner changes a row by mistake.
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION 'the ledger is append only: % on % is refused', TG_OP, TG_TABLE_NAME
        USING ERRCODE = 'restrict_violation';
END
$$;

CREATE TRIGGER append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON project
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON content
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON revision
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON revision_bay
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON idempotency
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
