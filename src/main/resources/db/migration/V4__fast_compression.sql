-- Contents are compressed by LZ4 where the server was built with it, which costs less time than the
-- older method. What is stored reads the same.
DO $$
BEGIN
    ALTER TABLE content ALTER COLUMN bytes SET COMPRESSION lz4;
EXCEPTION
    WHEN feature_not_supported THEN
        RAISE NOTICE 'LZ4 is not available: contents keep the standard compression';
END
$$;
