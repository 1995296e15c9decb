package boltlore.trades.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Cut;
import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

@Label("Whatever is sawn")
class SawingLaws {

    private static final double DUST = 0.001;

    @Property(tries = 60)
    @Label("every piece is cut exactly once")
    void every_piece_once(@ForAll("racks") Rack rack) {
        assertThat(rack.plan().bars().stream()
                        .flatMap(bar -> bar.pieces().stream())
                        .map(piece -> piece.set().mark()))
                .containsExactlyInAnyOrderElementsOf(rack.marks());
    }

    @Property(tries = 60)
    @Label(
            "pieces lie behind the trim, a kerf behind each other along the whole section, and before the end of their bar")
    void in_their_places(@ForAll("racks") Rack rack) {
        for (SawnBar bar : rack.plan().bars()) {
            Edge free = new Edge(8, 8);
            for (LaidPiece piece : bar.pieces()) {
                Edge begin = Edge.of(piece.fromMm(), piece.left(), 1);
                assertThat(begin.lower()).isGreaterThanOrEqualTo(free.lower() + 2 - DUST);
                assertThat(begin.upper()).isGreaterThanOrEqualTo(free.upper() + 2 - DUST);
                assertThat(piece.toMm()).isLessThanOrEqualTo(bar.lengthMm());
                free = Edge.of(piece.toMm(), piece.right(), -1);
            }
        }
    }

    /** Where an end stands at the lower and the upper side of a section of 40 mm. */
    private record Edge(double lower, double upper) {

        /** @param inward 1 for an end whose piece lies towards the tail */
        static Edge of(BigDecimal outermost, LaidPiece.LaidEnd end, int inward) {
            double slant = 40 * Math.tan(Math.toRadians(end.degrees().doubleValue())) * inward;
            double out = outermost.doubleValue();
            return end.lean() == inward
                    ? new Edge(out, out + slant)
                    : new Edge(end.lean() == 0 ? out : out + slant, out);
        }
    }

    @Property(tries = 60)
    @Label("a bar yields its trim, its pieces, one kerf or more between each two, and its rest")
    void nothing_is_lost(@ForAll("squareRacks") Rack rack) {
        for (SawnBar bar : rack.plan().bars()) {
            BigDecimal kerfs =
                    new BigDecimal("2").multiply(BigDecimal.valueOf(bar.pieces().size()));
            BigDecimal sum = BigDecimal.TEN.add(bar.piecesMm()).add(kerfs).add(bar.restMm());
            assertThat(sum).isBetween(bar.lengthMm(), bar.lengthMm().add(new BigDecimal("2")));
        }
    }

    @Property(tries = 60)
    @Label("remnants at hand never make it dearer, and are never used twice")
    void remnants(@ForAll("racks") Rack rack) {
        MaterialCuts with = rack.plan();
        assertThat(with.cost())
                .isLessThanOrEqualTo(rack.withoutRemnants().plan().cost());
        assertThat(with.bars().stream().filter(bar -> !bar.isBought()).map(SawnBar::remnant))
                .doesNotHaveDuplicates();
    }

    @Property(tries = 50)
    @Label("the same is cut the same way each time")
    void the_same(@ForAll("racks") Rack rack) {
        assertThat(rack.plan()).isEqualTo(rack.plan());
    }

    @Provide
    Arbitrary<Rack> racks() {
        return racks(Arbitraries.of(0, 0, 30, 45));
    }

    @Provide
    Arbitrary<Rack> squareRacks() {
        return racks(Arbitraries.just(0));
    }

    private static Arbitrary<Rack> racks(Arbitrary<Integer> angles) {
        Arbitrary<Cut> cuts = Combinators.combine(Arbitraries.integers().between(90, 2900), angles, angles)
                .as((length, left, right) -> Rack.piece(1, String.valueOf(length), left, right));
        return Combinators.combine(
                        cuts.list().ofMinSize(1).ofMaxSize(25),
                        Arbitraries.integers().between(200, 2500).list().ofMaxSize(3),
                        Arbitraries.of(true, false))
                .as(SawingLaws::rack);
    }

    private static Rack rack(List<Cut> cuts, List<Integer> remnants, Boolean turns) {
        Rack rack = new Rack().bar(3000, "17.50").bar(6000, "31.20").saw("2", "10");
        cuts.forEach(rack::part);
        for (int i = 0; i < remnants.size(); i++) {
            rack.remnant("R" + i, String.valueOf(remnants.get(i)), "H" + i);
        }
        return turns ? rack : rack.notTurning();
    }
}
