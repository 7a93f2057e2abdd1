package org.shelterwright.layouts.edit;

/**
 * One change that a person makes to what is kept in a file: a layout, a journey. It may break limits, which the ledger then shows, but
 * never what it changes.
 *
 * @param <T> what is changed; immutable
 */
public interface Change<T> {
    /** What was done, as the list of changes shows it, such as "Put rack-1". */
    String name();

    /**
     * What it is after this change.
     *
     * @throws IllegalArgumentException with a sentence if the change makes no sense for it
     */
    T apply(T before);
}
