package boltlore.trades.cutting.packing;

/** What the kinds chosen for one bar take up, kept up to date while kinds come and go. */
final class Load {

    private final Task task;
    private final int[] single;
    private final int[] both;
    private long lengths;
    private long exposed;

    Load(Task task) {
        this.task = task;
        this.single = new int[task.exposure().size()];
        this.both = new int[task.exposure().size()];
    }

    /** Adds so many of a kind; takes them away where the number is below 0. */
    void add(int kind, int times) {
        PieceType added = task.kinds().get(kind);
        lengths += times * added.length();
        if (added.ends().slanted()) {
            int slant = added.ends().slant();
            exposed -= exposed(slant);
            single[slant] += times * added.ends().single();
            both[slant] += times * added.ends().both();
            exposed += exposed(slant);
        }
    }

    private long exposed(int slant) {
        return Ends.exposed(single[slant], both[slant]) * task.exposure().get(slant);
    }

    /** Without what is lost at slanted ends. */
    long lengths() {
        return lengths;
    }

    long total() {
        return lengths + exposed;
    }
}
