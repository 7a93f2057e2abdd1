package org.shelterwright.catalog.json;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 of what a value says, independent of how its file was laid out. */
public final class ContentHash {
    private ContentHash() {}

    /** Hash of the canonical JSON of a value: 64 hexadecimal digits. */
    public static <T> String of(JsonFormat<T> format, T value) {
        return of(format.canonical(value).getBytes(StandardCharsets.UTF_8));
    }

    /** Hash of bytes as they are: 64 hexadecimal digits. */
    public static String of(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256.", e);
        }
    }
}
