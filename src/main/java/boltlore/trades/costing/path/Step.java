package boltlore.trades.costing.path;

import boltlore.catalogue.Part;
import org.jspecify.annotations.Nullable;

/**
 * A step on the way to the shipped kit.
 *
 * @param place makes the steps of a part at its several places different
 * @param part null for the last step, which is about the whole kit
 * @param finish that is put on, in a step of coating; else empty
 */
public record Step(int place, What what, @Nullable Part part, String finish) {

    /** What is done. */
    public enum What {
        BUY("Order and receive"),
        MAKE("Make"),
        ASSEMBLE("Assemble or weld"),
        COAT("Coat"),
        FINISH_KIT("Assemble, test and pack the kit");

        private final String says;

        What(String says) {
            this.says = says;
        }

        public String says() {
            return says;
        }
    }

    static Step kit() {
        return new Step(0, What.FINISH_KIT, null, "");
    }

    // Its place alone tells a step from the others of its kit.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Step step && step.place == place;
    }

    @Override
    public int hashCode() {
        return place;
    }
}
