-- What the service's login may do: read and append, nothing else. Runs again when the login's name
-- changes, since the name is part of this file's checksum.
GRANT USAGE ON SCHEMA ledger TO "${serviceRole}";
GRANT SELECT, INSERT ON project, content, revision, bay_change, idempotency,
    result_verdicts TO "${serviceRole}";
