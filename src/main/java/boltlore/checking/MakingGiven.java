package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Making;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A made part has a drawing, operations, and something that it is made from. */
final class MakingGiven {

    private MakingGiven() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.parts().values().stream()
                .filter(part -> part.source() == Source.MAKE)
                .flatMap(MakingGiven::check);
    }

    private static Stream<Remark> check(Part part) {
        Making making = part.making();
        List<String> missing = new ArrayList<>();
        if (making.drawing() == null) {
            missing.add("drawing");
        }
        if (making.operations().isEmpty()) {
            missing.add("operation");
        }
        if (making.material() == null && making.cuts().isEmpty() && !part.isAssembly()) {
            missing.add("material");
        }
        return missing.isEmpty()
                ? Stream.empty()
                : Stream.of(new Remark(
                        Said.part(part),
                        Check.MAKING,
                        "no " + String.join(", no ", missing),
                        "drawing, operations and material of a made part",
                        "Ask engineering, or say that it is bought"));
    }

    /** The file of the drawing that a part is made to has the issue that is made. */
    static Stream<Remark> drawings(Catalogue catalogue) {
        return catalogue.parts().values().stream()
                .flatMap(part -> Stream.ofNullable(part.making().drawing())
                        .flatMap(drawing -> part.upkeep().documents().stream()
                                .filter(document -> drawing.number().equals(document.number())
                                        && !drawing.issue().equals(document.issue()))
                                .map(document -> new Remark(
                                        Said.part(part),
                                        Check.DRAWING_ISSUE,
                                        "drawing " + drawing.number() + " in issue " + drawing.issue()
                                                + ", among the documents in issue " + document.issue(),
                                        "one issue",
                                        "Make to the newest one, and file that"))));
    }
}
