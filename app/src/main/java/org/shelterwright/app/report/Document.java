package org.shelterwright.app.report;

/**
 * One file of a report.
 *
 * @param file its name in the folder
 * @param line what it is, in one line
 * @param bytes its content; not to be changed
 */
@SuppressWarnings("ArrayRecordComponent") // Documents are never compared.
public record Document(String file, String line, byte[] bytes) {}
