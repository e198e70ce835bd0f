// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/**
 * The tables of a job file and the way to them from each older version. {@code PRAGMA user_version} says which version
 * a file has. Each step takes a file from the version before it to its own; a new file goes all the way. Steps are
 * never edited once a version with them has been used: a new need is a new step.
 *
 * <ol>
 * <li>head, sheets and changes
 * <li>the recognised netlist kept with the job
 * <li>files of captures
 * </ol>
 */
final class Schema {

    private static final List<List<String>> STEPS = List.of(
            List.of("CREATE TABLE head (key TEXT PRIMARY KEY NOT NULL, value TEXT NOT NULL)",
                    "CREATE TABLE sheet (number INTEGER PRIMARY KEY NOT NULL, file_name TEXT NOT NULL,"
                            + " sha256 TEXT NOT NULL, first_page INTEGER NOT NULL, page_count INTEGER NOT NULL,"
                            + " password TEXT, bytes BLOB NOT NULL)",
                    "CREATE TABLE change (number INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, made TEXT NOT NULL,"
                            + " kind TEXT NOT NULL, body TEXT NOT NULL, words TEXT NOT NULL,"
                            + " status TEXT NOT NULL CHECK (status IN ('done', 'undone', 'abandoned')))",
                    "PRAGMA application_id = " + Database.APPLICATION_ID),
            List.of("CREATE TABLE netlist (number INTEGER PRIMARY KEY NOT NULL CHECK (number = 1),"
                    + " made TEXT NOT NULL, document BLOB NOT NULL)"),
            List.of("CREATE TABLE capture (sha256 TEXT PRIMARY KEY NOT NULL, file_name TEXT NOT NULL,"
                    + " bytes BLOB NOT NULL)"));

    /** The version that this program writes. */
    static final int VERSION = STEPS.size();

    private Schema() {
    }

    /**
     * Brings a file to {@link #VERSION} in one transaction: afterwards all of it is done or nothing.
     *
     * @param connection with no transaction begun
     */
    static void upgrade(Connection connection) throws SQLException {
        upgrade(connection, VERSION);
    }

    /** Brings a file to a version no newer than {@link #VERSION}. */
    static void upgrade(Connection connection, int target) throws SQLException {
        int version = (int) Database.pragma(connection, "user_version");
        if (version >= target) {
            return;
        }
        connection.setAutoCommit(false);
        try (Statement s = connection.createStatement()) {
            for (List<String> step : STEPS.subList(version, target)) {
                for (String sql : step) {
                    s.execute(sql);
                }
            }
            s.execute("PRAGMA user_version = " + target);
            connection.commit();
        } catch (SQLException e) {
            connection.rollback();
            throw e;
        } finally {
            connection.setAutoCommit(true);
        }
    }
}
