// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.job.JobSheet;
import org.probeleaf.job.LogEntry;
import org.probeleaf.job.LogEntry.Status;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.schematic.checksum.Sha256;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.netlist.Netlist;

/** Reads and writes the tables of an open job file. Not for two threads at once. */
public final class JobStore implements AutoCloseable {

    private final Connection connection;

    /** Takes over a connection to a file of version {@link Schema#VERSION}. */
    JobStore(Connection connection) {
        this.connection = connection;
    }

    /** Something that is written as one. */
    @FunctionalInterface
    public interface Writing<T> {
        T write() throws SQLException;
    }

    /** Does the writing in one transaction that is on the disk when this returns, and counts the revision up. */
    public <T> T commit(Writing<T> writing) throws SQLException {
        connection.setAutoCommit(false);
        try (Statement s = connection.createStatement()) {
            T result = writing.write();
            s.executeUpdate("UPDATE head SET value = value + 1 WHERE key = 'revision'");
            connection.commit();
            return result;
        } catch (SQLException | RuntimeException e) {
            connection.rollback();
            throw e;
        } finally {
            connection.setAutoCommit(true);
        }
    }

    /** Runs several readings over one and the same state of the file. */
    public <T> T snapshot(Writing<T> reading) throws SQLException {
        try (Statement s = connection.createStatement()) {
            s.execute("BEGIN DEFERRED");
            try {
                return reading.write();
            } finally {
                s.execute("ROLLBACK");
            }
        }
    }

    /** Fills an empty file. */
    void fill(JobDetails details, List<NewSheet> sheets, Instant when) throws SQLException {
        setHead("details", ChangeCodec.json(MarkCodec.details(details)));
        setHead("created", when.toString());
        setHead("revision", "0");
        int firstPage = 1;
        for (int i = 0; i < sheets.size(); i++) {
            NewSheet sheet = sheets.get(i);
            try (PreparedStatement s = connection.prepareStatement("INSERT INTO sheet"
                    + " (number, file_name, sha256, first_page, page_count, password, bytes) VALUES (?,?,?,?,?,?,?)")) {
                s.setInt(1, i);
                s.setString(2, sheet.fileName());
                s.setString(3, Sha256.of(sheet.bytes()));
                s.setInt(4, firstPage);
                s.setInt(5, sheet.pageCount());
                s.setString(6, sheet.password());
                s.setBytes(7, sheet.bytes());
                s.executeUpdate();
            }
            firstPage += sheet.pageCount();
        }
    }

    private void setHead(String key, String value) throws SQLException {
        try (PreparedStatement s = connection.prepareStatement("INSERT OR REPLACE INTO head VALUES (?,?)")) {
            s.setString(1, key);
            s.setString(2, value);
            s.executeUpdate();
        }
    }

    private String head(String key) throws SQLException {
        try (PreparedStatement s = connection.prepareStatement("SELECT value FROM head WHERE key = ?")) {
            s.setString(1, key);
            try (ResultSet r = s.executeQuery()) {
                if (r.next()) {
                    return r.getString(1);
                }
            }
        }
        throw new IllegalArgumentException("the head lacks \"" + key + "\"");
    }

    /** The head as the job was made with. */
    public JobDetails startDetails() throws SQLException {
        return MarkCodec.details(ChangeCodec.parse(head("details")));
    }

    public long revision() throws SQLException {
        return Long.parseLong(head("revision"));
    }

    public List<JobSheet> sheets() throws SQLException {
        List<JobSheet> sheets = new ArrayList<>();
        try (Statement s = connection.createStatement(); ResultSet r = s.executeQuery(
                "SELECT number, file_name, sha256, first_page, page_count FROM sheet ORDER BY number")) {
            while (r.next()) {
                sheets.add(new JobSheet(r.getInt(1), r.getString(2), r.getString(3), r.getInt(4), r.getInt(5)));
            }
        }
        return sheets;
    }

    public byte[] sheetBytes(int index) throws SQLException {
        return sheetColumn(index, "bytes", ResultSet::getBytes);
    }

    public String sheetPassword(int index) throws SQLException {
        return sheetColumn(index, "password", ResultSet::getString);
    }

    /** Keeps a capture's file; one with the same bytes is kept once. To be called in {@link #commit}. */
    public void addCapture(String sha256, String fileName, byte[] bytes) throws SQLException {
        try (PreparedStatement s = connection.prepareStatement("INSERT OR IGNORE INTO capture VALUES (?,?,?)")) {
            s.setString(1, sha256);
            s.setString(2, fileName);
            s.setBytes(3, bytes);
            s.executeUpdate();
        }
    }

    /** The bytes of a capture's file, or null where the job does not have it. */
    public byte[] captureBytes(String sha256) throws SQLException {
        try (PreparedStatement s = connection.prepareStatement("SELECT bytes FROM capture WHERE sha256 = ?")) {
            s.setString(1, sha256);
            try (ResultSet r = s.executeQuery()) {
                return r.next() ? r.getBytes(1) : null;
            }
        }
    }

    @FunctionalInterface
    private interface Column<T> {
        T get(ResultSet row, int column) throws SQLException;
    }

    private <T> T sheetColumn(int index, String name, Column<T> column) throws SQLException {
        try (PreparedStatement s = connection.prepareStatement("SELECT " + name + " FROM sheet WHERE number = ?")) {
            s.setInt(1, index);
            try (ResultSet r = s.executeQuery()) {
                if (!r.next()) {
                    throw new IndexOutOfBoundsException("the job has no sheet file " + index);
                }
                return column.get(r, 1);
            }
        }
    }

    /** Every change, in order. */
    public List<ChangeLog.Row> changes() throws SQLException {
        List<ChangeLog.Row> rows = new ArrayList<>();
        try (Statement s = connection.createStatement(); ResultSet r = s.executeQuery(
                "SELECT number, made, kind, body, words, status FROM change ORDER BY number")) {
            while (r.next()) {
                LogEntry entry = new LogEntry(r.getLong(1), Instant.parse(r.getString(2)), r.getString(5),
                        ChangeLog.status(r.getString(6)));
                rows.add(new ChangeLog.Row(entry, read(entry, r.getString(3), r.getString(4))));
            }
        }
        return rows;
    }

    private static Change read(LogEntry entry, String kind, String body) {
        try {
            return ChangeCodec.read(kind, body);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("change " + entry.number() + ": " + e.getMessage(), e);
        }
    }

    /** Writes a change as done and abandons what was undone; returns its row. To be called in {@link #commit}. */
    public ChangeLog.Row addChange(Change change, String words) throws SQLException {
        try (Statement s = connection.createStatement()) {
            s.executeUpdate("UPDATE change SET status = 'abandoned' WHERE status = 'undone'");
        }
        try (PreparedStatement s = connection.prepareStatement(
                "INSERT INTO change (made, kind, body, words, status) VALUES (?,?,?,?,'done') RETURNING number")) {
            s.setString(1, change.when().toString());
            s.setString(2, ChangeCodec.kind(change));
            s.setString(3, ChangeCodec.body(change));
            s.setString(4, words);
            try (ResultSet r = s.executeQuery()) {
                r.next();
                return new ChangeLog.Row(new LogEntry(r.getLong(1), change.when(), words, Status.DONE), change);
            }
        }
    }

    /** Writes a row's new status. To be called in {@link #commit}. */
    public void setStatus(ChangeLog.Row row, Status status) throws SQLException {
        try (PreparedStatement s = connection.prepareStatement("UPDATE change SET status = ? WHERE number = ?")) {
            s.setString(1, ChangeLog.stored(status));
            s.setLong(2, row.entry().number());
            s.executeUpdate();
        }
    }

    /** The netlist that is kept, or null. */
    public Netlist netlist() throws SQLException {
        try (Statement s = connection.createStatement();
                ResultSet r = s.executeQuery("SELECT document FROM netlist")) {
            return r.next() ? NetlistJson.read(new ByteArrayInputStream(r.getBytes(1))) : null;
        } catch (IOException e) {
            throw new IllegalArgumentException("the netlist cannot be read: " + e.getMessage(), e);
        }
    }

    /** Keeps a netlist in place of any other. To be called in {@link #commit}. */
    public void setNetlist(Netlist netlist, Instant when) throws SQLException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            NetlistJson.write(netlist, out);
        } catch (IOException e) {
            throw new IllegalStateException("writing to memory cannot fail", e);
        }
        try (PreparedStatement s = connection.prepareStatement("INSERT OR REPLACE INTO netlist VALUES (1,?,?)")) {
            s.setString(1, when.toString());
            s.setBytes(2, out.toByteArray());
            s.executeUpdate();
        }
    }

    /** What SQLite itself finds wrong with the file, one line each; empty where it is sound. */
    List<String> integrity() throws SQLException {
        List<String> lines = new ArrayList<>();
        try (Statement s = connection.createStatement(); ResultSet r = s.executeQuery("PRAGMA integrity_check")) {
            while (r.next()) {
                if (!"ok".equals(r.getString(1))) {
                    lines.add("the file's structure: " + r.getString(1).replace('\n', ' '));
                }
            }
        }
        return lines;
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
