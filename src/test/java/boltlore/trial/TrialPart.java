package boltlore.trial;

import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Contained;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Geometry;
import boltlore.catalogue.Hand;
import boltlore.catalogue.Handed;
import boltlore.catalogue.Joined;
import boltlore.catalogue.Making;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.catalogue.Source;
import boltlore.catalogue.Structure;
import boltlore.catalogue.Traits;
import boltlore.catalogue.Upkeep;
import boltlore.measure.PartNumber;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A part of the part master: a bought leaf of 1 kg that costs 10 and has a bin, unless told otherwise. */
public final class TrialPart {

    private final PartNumber number;
    private BigDecimal cost = BigDecimal.TEN;
    private BigDecimal massKg = BigDecimal.ONE;
    private Source source = Source.BUY;
    private String bin = "F-01-01-A-01";
    private boolean stocked;
    private @Nullable Joined joined;
    private @Nullable CoatingSpec coat;
    private @Nullable Integer lengthMm;
    private @Nullable Handed handed;
    private final List<Contained> contains = new ArrayList<>();
    private final List<Need> needs = new ArrayList<>();
    private final List<Port> ports = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();

    private TrialPart(String number) {
        this.number = new PartNumber(number);
    }

    public static TrialPart part(String number) {
        return new TrialPart(number);
    }

    public TrialPart costs(String amount) {
        cost = new BigDecimal(amount);
        return this;
    }

    public TrialPart weighs(String kg) {
        massKg = new BigDecimal(kg);
        return this;
    }

    public TrialPart made() {
        source = Source.MAKE;
        return this;
    }

    /** The base vehicle's own: it costs and weighs nothing and lies in no bin. */
    public TrialPart ofTheVehicle() {
        source = Source.DONOR;
        cost = BigDecimal.ZERO;
        massKg = BigDecimal.ZERO;
        bin = "";
        return this;
    }

    public TrialPart bin(String place) {
        bin = place;
        return this;
    }

    public TrialPart contains(String part, String quantity) {
        contains.add(new Contained(new PartNumber(part), new BigDecimal(quantity)));
        return this;
    }

    public TrialPart joined(Joined how) {
        joined = how;
        return this;
    }

    public TrialPart stocked() {
        stocked = true;
        return this;
    }

    public TrialPart needs(Need need) {
        needs.add(need);
        return this;
    }

    public TrialPart coatedAs(String role, Feature... features) {
        coat = coat(role, null, features);
        return this;
    }

    public TrialPart coatedIn(String finish, Feature... features) {
        coat = coat(null, finish, features);
        return this;
    }

    public TrialPart hand(String pair, Hand hand) {
        handed = new Handed(pair, hand);
        return this;
    }

    public TrialPart port(String name, @Nullable String blank, String... mates) {
        List<PartNumber> mating = Stream.of(mates).map(PartNumber::new).toList();
        ports.add(new Port(name, "", mating, blank == null ? null : new PartNumber(blank)));
        return this;
    }

    public TrialPart caution(String code) {
        cautions.add(code);
        return this;
    }

    public TrialPart lengthMm(int length) {
        lengthMm = length;
        return this;
    }

    private static CoatingSpec coat(@Nullable String role, @Nullable String finish, Feature... features) {
        return new CoatingSpec(
                role,
                finish,
                new BigDecimal("0.10"),
                new BigDecimal("2"),
                new BigDecimal("4"),
                List.of(features),
                1,
                new EnvelopeMm(200, 100, 50));
    }

    public Part done() {
        Structure structure =
                contains.isEmpty() ? Structure.LEAF : new Structure(List.copyOf(contains), joined, stocked, null);
        return new Part(
                number,
                "A",
                Wording.english("Part " + number),
                "each",
                source,
                cost,
                BigDecimal.ZERO,
                contains.isEmpty() ? massKg : null,
                5,
                bin,
                null,
                null,
                structure,
                Making.NONE,
                List.copyOf(needs),
                coat,
                lengthMm,
                null,
                List.of(),
                handed,
                List.copyOf(ports),
                List.copyOf(cautions),
                Traits.NONE,
                null,
                null,
                null,
                Geometry.NONE,
                Upkeep.NONE);
    }
}
