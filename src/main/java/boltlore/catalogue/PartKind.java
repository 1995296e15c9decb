package boltlore.catalogue;

import boltlore.measure.Wording;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What parts of one kind bring with them in this house, in every family.
 *
 * @param cautions that stand with every part of it
 * @param hs beginnings of customs codes that only parts of it have
 * @param flow what goes through a port of every part of it, and of no other; or null
 * @param takes how many of another kind each part of it holds or asks for
 * @param signed whether whoever tightens the bolts of such a part signs for them, as those of steering and brakes
 * @param tracked what stores write down of each part of it at least, or null where the house does not ask
 * @param needed null where no vehicle must have one
 */
public record PartKind(
        String name,
        Wording says,
        List<String> cautions,
        List<String> hs,
        @Nullable Flow flow,
        List<Takes> takes,
        boolean signed,
        @Nullable Tracked tracked,
        @Nullable Needed needed) {

    /** That many of another kind, no more and no fewer. */
    public record Takes(String kind, int quantity) {}

    /**
     * That a vehicle must have one.
     *
     * @param with kinds: wherever a part of one of them is in the kit
     * @param markets where it is asked for; in all where empty
     * @param because in a sentence for people
     * @param source of the rule
     */
    public record Needed(List<String> with, List<String> markets, Wording because, String source) {}

    /** Whether a part is of this kind: it says so, or its customs code or a port of it does. */
    public boolean covers(Part part) {
        Customs customs = part.customs();
        return part.traits().kinds().contains(name)
                || (customs != null && hs.stream().anyMatch(customs.hs()::startsWith))
                || (flow != null
                        && part.ports().stream()
                                .map(Port::joint)
                                .anyMatch(joint -> joint != null && joint.flow() == flow));
    }
}
