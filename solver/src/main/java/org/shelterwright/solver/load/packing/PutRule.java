package org.shelterwright.solver.load.packing;

/** What practice asks of a load while it is built. For one thread; nothing in it belongs to one load. */
public interface PutRule {
    /** Whether a block may be put here. */
    boolean allows(Packing packing, int block, int x, int y, int z, boolean mirrorX, boolean mirrorY);

    /** What a complete load is worth: its value, less what it breaks. */
    double worth(Packing packing);

    /**
     * Goes on to what comes next in the order of loading, when nothing more of what came before fits.
     *
     * @return false if there is nothing more
     */
    boolean goOn(Packing packing);

    /** Nothing but value counts. */
    PutRule FREE = new PutRule() {
        @Override
        public boolean allows(Packing packing, int block, int x, int y, int z, boolean mirrorX, boolean mirrorY) {
            return true;
        }

        @Override
        public double worth(Packing packing) {
            return packing.value();
        }

        @Override
        public boolean goOn(Packing packing) {
            return false;
        }
    };
}
