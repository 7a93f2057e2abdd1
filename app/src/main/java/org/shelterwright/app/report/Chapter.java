package org.shelterwright.app.report;

/** Documents that are made together. What it adds depends on the issue alone. */
@FunctionalInterface
interface Chapter {
    void add(DocumentSet set, Issue issue, Press press);
}
