package boltlore.trades.coating;

import boltlore.catalogue.Oven;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The rails of an oven while pieces are hung on them. */
final class Rails {

    /** Between two pieces, and below one that another hangs from: common practice, no source. */
    static final int AIR_MM = 60;

    private final Oven oven;
    /** From the door up to where each rail is taken, air included. */
    private final int[] takenMm;

    private final List<Place> places = new ArrayList<>();
    /** The lowest place of each that pieces hang below one another in. */
    private final List<Place> lowest = new ArrayList<>();

    Rails(Oven oven) {
        this.oven = oven;
        this.takenMm = new int[oven.rails()];
    }

    List<Place> places() {
        return List.copyOf(places);
    }

    /** Rails that it takes up, where they lie as far apart as the oven's width allows. */
    int taken(Hung size) {
        int width = oven.inside().width();
        int rails = (size.acrossMm() * oven.rails() + width - 1) / width;
        return Math.max(1, rails);
    }

    /** Whether there was room: on the rails nearest to the left wall that still have some, or below another piece. */
    boolean hang(HungPiece piece) {
        Optional<Place> place = beside(piece).or(() -> below(piece));
        place.ifPresent(places::add);
        return place.isPresent();
    }

    private Optional<Place> beside(HungPiece piece) {
        int rails = taken(piece.size());
        return IntStream.rangeClosed(0, takenMm.length - rails)
                .mapToObj(first -> new Place(piece, first + 1, rails, free(first, rails), 0))
                .filter(place -> place.toMm() <= oven.inside().length())
                .findFirst()
                .map(this::take);
    }

    private int free(int first, int rails) {
        return IntStream.range(first, first + rails)
                .map(rail -> takenMm[rail])
                .max()
                .orElse(0);
    }

    private Place take(Place place) {
        for (int rail = place.rail() - 1; rail < place.rail() - 1 + place.rails(); rail++) {
            takenMm[rail] = place.toMm() + AIR_MM;
        }
        lowest.add(place);
        return place;
    }

    private Optional<Place> below(HungPiece piece) {
        for (int i = 0; i < lowest.size(); i++) {
            Place above = lowest.get(i);
            Place place = new Place(piece, above.rail(), above.rails(), above.fromMm(), above.bottomMm() + AIR_MM);
            if (isCovered(place, above) && place.bottomMm() <= oven.inside().height()) {
                lowest.set(i, place);
                return Optional.of(place);
            }
        }
        return Optional.empty();
    }

    /** Whether it is neither longer nor wider than what it hangs from, so that it does not touch what hangs beside. */
    private static boolean isCovered(Place place, Place above) {
        return place.piece().size().alongMm() <= above.piece().size().alongMm()
                && place.piece().size().acrossMm() <= above.piece().size().acrossMm();
    }
}
