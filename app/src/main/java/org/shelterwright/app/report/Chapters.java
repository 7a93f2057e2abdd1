package org.shelterwright.app.report;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Makes chapters side by side, each on one thread. What comes out, and which failure is told if several fail, does not depend on how
 * many threads there are.
 */
final class Chapters {
    private final String program;
    private final int threads;

    /** Presses that no chapter uses just now: opening the typeface takes time. */
    private final Deque<Press> idle = new ArrayDeque<>();

    /** @param program program and version, such as "Shelterwright 0.1.0" */
    Chapters(String program, int threads) {
        this.program = program;
        this.threads = threads;
    }

    /** Makes all chapters; their documents stand in the order of the chapters. */
    DocumentSet make(List<Chapter> chapters, Issue issue) {
        ExecutorService executor = Executors.newFixedThreadPool(Math.min(threads, chapters.size()), runnable -> {
            Thread thread = new Thread(runnable, "documents");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Future<DocumentSet>> made = new ArrayList<>();
            for (Chapter chapter : chapters) {
                made.add(executor.submit(() -> made(chapter, issue)));
            }
            DocumentSet all = new DocumentSet();
            for (Future<DocumentSet> part : made) {
                all.add(await(part));
            }
            return all;
        } finally {
            executor.shutdownNow();
        }
    }

    private DocumentSet made(Chapter chapter, Issue issue) {
        Press press = take();
        DocumentSet set = new DocumentSet();
        chapter.add(set, issue, press);
        give(press);
        return set;
    }

    private synchronized Press take() {
        Press press = idle.poll();
        return press == null ? Press.of(program) : press;
    }

    private synchronized void give(Press press) {
        idle.push(press);
    }

    private static DocumentSet await(Future<DocumentSet> part) {
        try {
            return part.get();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Making documents was interrupted.", interrupted);
        } catch (ExecutionException failed) {
            // As if it had failed on the thread that asked: what is said of it is decided there.
            if (failed.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            if (failed.getCause() instanceof Error fault) {
                throw fault;
            }
            throw new IllegalStateException("A document could not be made.", failed.getCause());
        }
    }
}
