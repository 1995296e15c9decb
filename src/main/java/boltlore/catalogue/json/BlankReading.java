package boltlore.catalogue.json;

import boltlore.catalogue.Blank;
import boltlore.json.ObjectReader;
import boltlore.json.Range;

/** The flat piece of sheet that a part is bent from. */
final class BlankReading {

    private static final Range LEG = Range.above(0, 20_000);

    /** Beyond this the faces meet too far out for outside lengths to mean anything. */
    private static final Range BEND = Range.above(0, 135);

    private BlankReading() {}

    static Blank blank(ObjectReader reader) {
        Blank blank = new Blank(
                reader.decimal("widthMm", LEG),
                reader.findDecimals("legsMm", LEG),
                reader.findDecimals("bendsDegrees", BEND));
        if (reader.sound() && blank.legsMm().size() != blank.bendsDegrees().size() + 1) {
            reader.fault(
                    "legs: " + blank.legsMm().size() + ", bends: "
                            + blank.bendsDegrees().size(),
                    "one leg more than there are bends",
                    "A flat piece has one leg and no bend.");
        }
        return blank;
    }
}
