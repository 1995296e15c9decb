package boltlore.trades.mounting;

import boltlore.bill.Item;
import boltlore.catalogue.Cut;
import boltlore.catalogue.Making;
import boltlore.catalogue.Material;
import boltlore.catalogue.Mounting.Bolts;
import boltlore.catalogue.Mounting.Mount;
import boltlore.catalogue.Mounting.Welds;
import boltlore.findings.Finding;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Welds that a mount is judged with, against what the parts that its bolts hold are made of. */
final class MountWelds {

    /** A fillet's throat is at most so much of the thinner of two sheets: common practice, no source. */
    private static final BigDecimal OF_SHEET = new BigDecimal("0.7");

    private static final Pattern GRADE = Pattern.compile("S(235|275|355)");

    /** Tensile strength by EN 1993-1-1:2005, table 3.1, and correlation factor by EN 1993-1-8:2005, table 4.1; from memory. */
    private enum Steel {
        S235(360, "0.8"),
        S275(430, "0.85"),
        S355(510, "0.9");

        @SuppressWarnings("ImmutableEnumChecker")
        private final BigDecimal ultimateMpa;

        @SuppressWarnings("ImmutableEnumChecker")
        private final BigDecimal correlation;

        Steel(int ultimateMpa, String correlation) {
            this.ultimateMpa = BigDecimal.valueOf(ultimateMpa);
            this.correlation = new BigDecimal(correlation);
        }
    }

    private MountWelds() {}

    static Stream<Finding> findings(Mount mount, KitInWork kit) {
        Welds welds = mount.welds();
        Bolts bolts = mount.bolts();
        if (welds == null || bolts == null) {
            return Stream.empty();
        }
        List<Material> materials = kit.bill().items().stream()
                .filter(item -> bolts.at().contains(item.position().name()))
                .flatMap(Item::all)
                .map(item -> item.part().making())
                .flatMap(MountWelds::names)
                .map(kit.catalogue().materials()::get)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        return Stream.of(steel(mount, welds, materials), throat(mount, welds, materials))
                .flatMap(Optional::stream);
    }

    private static Stream<String> names(Making making) {
        return Stream.concat(
                Stream.ofNullable(making.material()), making.cuts().stream().map(Cut::material));
    }

    /** The weaker of the parts joined counts: EN 1993-1-8:2005, 4.5.3.2. */
    private static Optional<Finding> steel(Mount mount, Welds welds, List<Material> materials) {
        return materials.stream()
                .map(Material::says)
                .map(GRADE::matcher)
                .filter(Matcher::find)
                .map(found -> Steel.valueOf(found.group()))
                .min(Comparator.naturalOrder())
                .filter(weakest -> welds.ultimateMpa().compareTo(weakest.ultimateMpa) > 0
                        || welds.correlation().compareTo(weakest.correlation) < 0)
                .map(weakest -> Finding.of(
                        MountingFinding.MOUNT_WELD_OF_OTHER_STEEL,
                        mount.name(),
                        "mount",
                        mount.says(),
                        "mpa",
                        welds.ultimateMpa(),
                        "factor",
                        welds.correlation(),
                        "steel",
                        weakest.name(),
                        "most",
                        weakest.ultimateMpa,
                        "least",
                        weakest.correlation));
    }

    private static Optional<Finding> throat(Mount mount, Welds welds, List<Material> materials) {
        return materials.stream()
                .filter(material ->
                        material.form().equals("sheet") || material.form().equals("plate"))
                .map(Material::thicknessMm)
                .flatMap(Stream::ofNullable)
                .min(Comparator.naturalOrder())
                .filter(thinnest -> welds.throatMm().compareTo(thinnest.multiply(OF_SHEET)) > 0)
                .map(thinnest -> Finding.of(
                        MountingFinding.MOUNT_WELD_ABOVE_SHEET,
                        mount.name(),
                        "mount",
                        mount.says(),
                        "throat",
                        welds.throatMm(),
                        "sheet",
                        thinnest,
                        "most",
                        thinnest.multiply(OF_SHEET).setScale(1, RoundingMode.HALF_UP)));
    }
}
