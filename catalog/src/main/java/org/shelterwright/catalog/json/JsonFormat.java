package org.shelterwright.catalog.json;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A file format: one JSON object whose first keys are the name of the format and its version, and whose further keys are
 * the components of a record. Immutable and safe for several threads. Cost of reading and writing: linear in the file.
 *
 * @param <T> the record
 */
public final class JsonFormat<T> {
    private static final String FORMAT = "format";
    private static final String VERSION = "version";

    private final String name;
    private final int version;
    private final Class<T> type;
    private final Codec<T> codec;
    private final Map<Integer, Migration> migrations;

    private JsonFormat(String name, int version, Class<T> type, Codec<T> codec, Map<Integer, Migration> migrations) {
        this.name = name;
        this.version = version;
        this.type = type;
        this.codec = codec;
        this.migrations = Map.copyOf(migrations);
    }

    /**
     * Makes a format of a public record.
     *
     * @param name such as "shelterwright-item"
     * @param version the version that is written, from 1
     * @throws IllegalArgumentException if a component of the record has a type that no file can hold
     */
    public static <T extends Record> JsonFormat<T> of(String name, int version, Class<T> type) {
        return new JsonFormat<>(name, version, type, new RecordCodec<>(type, new Codecs()), Map.of());
    }

    /** The same format, reading one older version too: {@code migration} brings it to the version after. */
    public JsonFormat<T> withMigration(int from, Migration migration) {
        Map<Integer, Migration> more = new HashMap<>(migrations);
        more.put(from, migration);
        return new JsonFormat<>(name, version, type, codec, more);
    }

    /**
     * The name of the format that a file says it is in.
     *
     * @throws InputException if the file is no JSON object or names no format
     */
    public static String nameIn(InputFile file) {
        return FileHead.read(file).format();
    }

    public String name() {
        return name;
    }

    public int version() {
        return version;
    }

    public Class<T> type() {
        return type;
    }

    /**
     * Reads a file.
     *
     * @throws InputException with everything that is wrong with it, as far as that can be told at once
     */
    public T read(Path file) {
        return open(InputFile.read(file)).value();
    }

    /**
     * Reads the content of a file.
     *
     * @param name as messages call it
     * @throws InputException with everything that is wrong with it, as far as that can be told at once
     */
    public T read(byte[] bytes, String name) {
        return open(new InputFile(name, bytes)).value();
    }

    /**
     * Reads the content of a file and keeps where its parts stood.
     *
     * @throws InputException with everything that is wrong with it, as far as that can be told at once
     */
    public Sourced<T> open(InputFile file) {
        return open(FileHead.read(file));
    }

    Sourced<T> open(FileHead head) {
        head.require(name, version);
        Node.ObjectNode body = head.content();
        for (int from = head.version(); from < version; from++) {
            Migration migration = migrations.get(from);
            if (migration == null) {
                throw new InputException(
                        head.file(),
                        "This file has version " + head.version() + " of \"" + name
                                + "\", which is no longer read. Open and save it with an older release first.");
            }
            Migration.Content content = new Migration.Content(body);
            migration.upgrade(content);
            body = content.object();
        }
        Trail trail = Trail.of(head.file());
        T value = codec.read(body, trail);
        if (value == null || !trail.problems().isEmpty()) {
            throw new InputException(trail.problems());
        }
        return new Sourced<>(value, new Places(head.file(), body));
    }

    /**
     * Writes a value for people to read: keys in the order of the record, what may be left out left out, UTF-8 with a
     * newline at the end. Equal values give equal bytes.
     */
    public byte[] write(T value) {
        return NodeWriter.pretty(root(value));
    }

    /** The keys whose content differs between two values, in the order of the record. */
    public List<String> differingKeys(T one, T other) {
        Node.ObjectNode a = root(one);
        Node.ObjectNode b = root(other);
        Set<String> keys = new LinkedHashSet<>();
        a.members().forEach(member -> keys.add(member.key()));
        b.members().forEach(member -> keys.add(member.key()));
        return keys.stream().filter(key -> !a.get(key).equals(b.get(key))).toList();
    }

    /**
     * The value on one line without needless spaces and without a newline, as it is compared by hash and as it stands in files
     * of one value a line. Equal values give equal lines.
     */
    public String canonical(T value) {
        return NodeWriter.compact(root(value));
    }

    private Node.ObjectNode root(T value) {
        List<Node.Member> members = new ArrayList<>();
        members.add(new Node.Member(FORMAT, null, new Node.TextNode(null, name)));
        members.add(new Node.Member(VERSION, null, new Node.NumberNode(null, BigDecimal.valueOf(version))));
        if (codec.write(value) instanceof Node.ObjectNode object) {
            members.addAll(object.members());
        }
        return new Node.ObjectNode(null, List.copyOf(members));
    }
}
