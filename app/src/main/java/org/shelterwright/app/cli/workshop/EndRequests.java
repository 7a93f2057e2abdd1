package org.shelterwright.app.cli.workshop;

import java.util.concurrent.CountDownLatch;

/**
 * Requests of the system that this process end (Ctrl-C, a closed terminal, a shutdown). The end is held back until the
 * work in hand has been written and {@link #ended} was told its status.
 */
public final class EndRequests implements Interrupts {
    private final CountDownLatch done = new CountDownLatch(1);
    private volatile int status;

    @Override
    public Watch watch(Runnable onRequest) {
        Thread hook = new Thread(() -> finish(onRequest), "end request");
        Runtime.getRuntime().addShutdownHook(hook);
        return () -> release(hook);
    }

    /** Tells that all work is done. */
    public void ended(int exitStatus) {
        status = exitStatus;
        done.countDown();
    }

    private void finish(Runnable onRequest) {
        onRequest.run();
        boolean ended = await();
        if (ended) {
            // Otherwise the process would end with the status of the signal, as if nothing had been kept.
            Runtime.getRuntime().halt(status);
        }
    }

    private boolean await() {
        try {
            done.await();
            return true;
        } catch (InterruptedException e) {
            return false;
        }
    }

    private static void release(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // The end was asked for; the hook is waiting for it.
        }
    }
}
