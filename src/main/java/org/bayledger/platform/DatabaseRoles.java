package org.bayledger.platform;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.postgresql.PGConnection;

/** Creates the login roles of a database where they are not there yet. */
final class DatabaseRoles {

    private DatabaseRoles() {}

    /**
     * Creates a login role without any special right, or gives an existing one this password. The
     * password is hashed on this side (SCRAM-SHA-256), so that no server log sees it.
     */
    static void ensureLogin(Connection connection, String role, String password)
            throws SQLException {
        if (!exists(connection, "SELECT 1 FROM pg_roles WHERE rolname = ?", role)) {
            execute(connection, "CREATE ROLE " + quoted(connection, role) + " LOGIN");
        }
        connection
                .unwrap(PGConnection.class)
                .alterUserPassword(role, password.toCharArray(), "scram-sha-256");
    }

    /** Creates a database for an owner, closed to every other role but the one that may connect. */
    static void ensureDatabase(Connection connection, String database, String owner, String user)
            throws SQLException {
        String name = quoted(connection, database);
        if (!exists(connection, "SELECT 1 FROM pg_database WHERE datname = ?", database)) {
            execute(connection, "CREATE DATABASE " + name + " OWNER " + quoted(connection, owner));
        }
        execute(connection, "REVOKE ALL ON DATABASE " + name + " FROM PUBLIC");
        execute(
                connection,
                "GRANT CONNECT ON DATABASE " + name + " TO " + quoted(connection, user));
    }

    private static boolean exists(Connection connection, String query, String name)
            throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(query)) {
            statement.setString(1, name);
            try (ResultSet found = statement.executeQuery()) {
                return found.next();
            }
        }
    }

    private static void execute(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private static String quoted(Connection connection, String identifier) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            return statement.enquoteIdentifier(identifier, true);
        }
    }
}
