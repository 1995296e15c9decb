package boltlore.trades.fixings;

import boltlore.catalogue.Workshop;
import boltlore.proof.fits.Terminals;
import boltlore.proof.fits.Terminals.Terminal;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import boltlore.resolution.Resolution;
import boltlore.trades.KitInWork;
import java.util.List;

/** Lugs on studs, whose nuts belong to the devices: tightened, looked at by a second person and signed for. */
final class TerminalsPage {

    private static final TableSpec<Terminal> TERMINALS = TableSpec.<Terminal>named("terminals")
            .said("device", "Device", 34, terminal -> terminal.device())
            .text("port", "Terminal", 14, Terminal::port)
            .said("lug", "Lug of", 34, terminal -> terminal.lug())
            .text("circuit", "Circuit", terminal -> terminal.highVoltage() ? "high voltage" : "12 V")
            .text("stud", "Stud", terminal -> terminal.stud().designation())
            .decimal("torque", "Torque", "Nm", 1, terminal -> terminal.stud().torqueNm())
            .text("secured", "Secured by", 26, terminal -> terminal.stud().securedBy())
            .text("from", "From", 26, terminal -> terminal.stud().source())
            .box(Column.tick("torqued", "Torqued"))
            .box(Column.signature("signed", "Signature, date"));

    private static final String ORDER =
            "Faces bare, clean and dry; lug straight on the face of the stud, under washer and nut of"
                    + " the device; the other pole stays covered until this one is tightened and covered.";

    private TerminalsPage() {}

    /** Those of a kit. */
    static List<Terminal> of(KitInWork kit) {
        Resolution.Resolved resolved = kit.bill().resolved();
        return Terminals.of(kit.catalogue(), resolved.choices(), resolved.kit().leftOut()::contains);
    }

    static PageBuilder compose(List<Terminal> terminals, Workshop workshop, String footer) {
        PageBuilder page = Page.named("Terminals").landscape().footer(footer);
        page.title("Electrical terminals to sign for")
                .add(TERMINALS.of(terminals))
                .note(ORDER);
        CautionNotes.always(page, "signed-joints", workshop, workshop.language());
        return page.signatures("Checked by a second person");
    }
}
