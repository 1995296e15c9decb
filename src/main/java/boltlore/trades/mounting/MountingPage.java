package boltlore.trades.mounting;

import boltlore.catalogue.Mounting.Mount;
import boltlore.catalogue.Mounting.Shock;
import boltlore.catalogue.Mounting.Welds;
import boltlore.findings.Findings;
import boltlore.report.CautionNotes;
import boltlore.report.FindingsTable;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The one page: each mount under its worst shock, and the shocks. */
final class MountingPage {

    private static final double NEWTON_IN_KN = 1000;

    private static final String FORMULAS =
            "Load: mass × share × 9.81 m/s² × all three multiples at once, and the output's"
                    + " torque over the lever on top where it pulls. Bolts in shear through the thread: EN 1993-1-8:2005, table 3.4."
                    + " Welds: fu / (√3 βw 1.25) × throat × length, EN 1993-1-8:2005, 4.5.3.3. Shocks are the workshop's own values,"
                    + " check before use. First estimates for the engineer's judgement, without fatigue, slip and what the body"
                    + " itself bears: no proof of strength, and no approval.";

    private MountingPage() {}

    static PageBuilder compose(List<MountLoad> loads, Findings findings, KitInWork kit, String footer) {
        PageBuilder page = Page.named("Mounting").landscape().footer(footer);
        List<MountLoad> worst = MountingTrade.worst(loads);
        page.title("Mounting").add(KitReport.head(kit, "mounting-head"));
        page.heading("Each mount under its worst shock").add(mounts(worst, kit));
        page.heading("Shocks, in multiples of the weight").add(shocks(loads)).note(FORMULAS);
        worst.stream().map(load -> load.mount().source()).distinct().forEach(source -> page.note("Mounts: " + source));
        FindingsTable.add(page, kit.answered(findings), kit.workshop().language());
        CautionNotes.always(page, "mounting", kit.workshop(), kit.workshop().language());
        return page.signatures("Checked by");
    }

    static TableBuilder mounts(List<MountLoad> worst, KitInWork kit) {
        return TableSpec.<MountLoad>named("mounts")
                .text("mount", "Mount", 40, load -> called(load.mount(), kit))
                .decimal("mass", "Carries", "kg", 1, load -> number(load.massKg()))
                .decimal("share", "Share", "", 2, load -> load.mount().share())
                .text("shock", "Worst shock", 34, load -> load.shock().says())
                .decimal("load", "Load", "kN", 1, load -> number(load.newton() / NEWTON_IN_KN))
                .decimal("bolts", "Bolts bear", "kN", 1, MountingPage::bolts)
                .decimal("welds", "Welds bear", "kN", 1, MountingPage::welds)
                .decimal("needed", "Throat needed", "mm", 1, MountingPage::needed)
                .decimal(
                        "throat",
                        "Throat",
                        "mm",
                        1,
                        load -> load.mount().welds() == null
                                ? null
                                : load.mount().welds().throatMm())
                .decimal("margin", "Bears / load", "", 2, load -> number(load.margin()))
                .code("name", load -> load.mount().name())
                .of(worst);
    }

    /** A mount that is a position of the kit by its name is called as that in every language. */
    private static String called(Mount mount, KitInWork kit) {
        return kit.bill()
                .all()
                .map(item -> item.position().says())
                .filter(position -> position.english().equals(mount.says()))
                .findFirst()
                .map(kit::says)
                .orElse(mount.says());
    }

    private static @Nullable BigDecimal bolts(MountLoad load) {
        return load.mount().bolts() == null
                ? null
                : number(MountLoad.bears(load.mount().bolts()) / NEWTON_IN_KN);
    }

    private static @Nullable BigDecimal welds(MountLoad load) {
        return load.mount().welds() == null
                ? null
                : number(MountLoad.bears(load.mount().welds()) / NEWTON_IN_KN);
    }

    private static @Nullable BigDecimal needed(MountLoad load) {
        Welds welds = load.mount().welds();
        return welds == null ? null : number(load.throatMm(welds));
    }

    private static TableBuilder shocks(List<MountLoad> loads) {
        return TableSpec.<Shock>named("shocks")
                .text("shock", "Shock", 40, Shock::says)
                .quantity("ahead", "Ahead", "", Shock::ahead)
                .quantity("across", "Across", "", Shock::across)
                .quantity("down", "Down", "", Shock::down)
                .text("torque", "With torque", shock -> shock.torque() ? "yes" : "no")
                .code("name", Shock::name)
                .of(loads.stream().map(MountLoad::shock).distinct().toList());
    }

    private static BigDecimal number(double figure) {
        return BigDecimal.valueOf(figure).round(new MathContext(6));
    }
}
