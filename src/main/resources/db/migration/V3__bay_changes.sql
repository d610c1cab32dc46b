-- Which bay stands at which place of a revision's list is kept where it changes, not once for every
-- bay of every revision: a row says that from this revision on this bay, with this input and these
-- results, stands at this place; a row without a bay says that the list no longer reaches it. What
-- stands at a place in a revision is what the newest row up to that revision says. Manifests, and so
-- hashes, are the same as before.
CREATE TABLE bay_change (
    organisation text    NOT NULL,
    project_id   uuid    NOT NULL,
    number       integer NOT NULL,
    place        integer NOT NULL CHECK (place >= 0),
    bay_id       text,
    input_hash   bytea,
    result_hash  bytea,
    PRIMARY KEY (organisation, project_id, number, place),
    CONSTRAINT bay_is_there_or_not CHECK (num_nonnulls(bay_id, input_hash, result_hash) IN (0, 3)),
    FOREIGN KEY (organisation, project_id, number) REFERENCES revision,
    FOREIGN KEY (organisation, input_hash) REFERENCES content,
    FOREIGN KEY (organisation, result_hash) REFERENCES content
);

-- what stands at a place as of a revision, and for how long
CREATE INDEX bay_change_at_place ON bay_change (organisation, project_id, place, number);
-- the history of a bay
CREATE INDEX bay_change_of_bay ON bay_change (organisation, project_id, bay_id, number);

INSERT INTO bay_change
SELECT bay.organisation, bay.project_id, bay.number, bay.position,
    bay.bay_id, bay.input_hash, bay.result_hash
FROM revision_bay bay
LEFT JOIN revision_bay before
    ON before.organisation = bay.organisation AND before.project_id = bay.project_id
    AND before.number = bay.number - 1 AND before.position = bay.position
WHERE (before.bay_id, before.input_hash, before.result_hash)
    IS DISTINCT FROM (bay.bay_id, bay.input_hash, bay.result_hash);

INSERT INTO bay_change (organisation, project_id, number, place)
SELECT revision.organisation, revision.project_id, revision.number, before.position
FROM revision
JOIN revision_bay before
    ON before.organisation = revision.organisation AND before.project_id = revision.project_id
    AND before.number = revision.number - 1
LEFT JOIN revision_bay bay
    ON bay.organisation = before.organisation AND bay.project_id = before.project_id
    AND bay.number = revision.number AND bay.position = before.position
WHERE bay.number IS NULL;

CREATE TRIGGER append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON bay_change
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

DROP TABLE revision_bay;
