package boltlore.trades.coating;

import boltlore.catalogue.Feature;
import boltlore.catalogue.Powder;
import boltlore.catalogue.PowderCoat;
import boltlore.measure.Digits;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What to do with one batch for an own oven before it is sprayed, and which runs it goes through. */
final class BatchPage {

    private static final Column[] BY_HAND = {Column.tick("treated", "Pre-treated"), Column.tick("good", "Accepted")};

    private static final String FACES = "Bearing faces stay bare: more than " + FilmDemand.MOST_UNDER_PRELOAD_UM
            + " µm under the head or washer of a preloaded joint come off before it is fitted.";

    private static final TableSpec<TooBig> TOO_BIG = CoatWords.counted(
                    CoatWords.marked(CoatWords.named(TableSpec.named("too-big"), 28, TooBig::row), 30, TooBig::row)
                            .text("why", "Why", 70, TooBig::why),
                    TooBig::row)
            .box(Column.blank("where", "Coated where"));

    private final OvenBatch batch;
    private final CoatJob job;

    private BatchPage(OvenBatch batch, CoatJob job) {
        this.batch = batch;
        this.job = job;
    }

    /** All batches, one below the other. */
    static PageBuilder compose(CoatJob job, String footer) {
        PageBuilder page = Page.named("Batches").footer(footer).title("Batches: pre-treat and mask");
        CautionNotes.always(
                page, "coating-batch", job.workshop(), job.workshop().language());
        job.plan().batches().forEach(batch -> new BatchPage(batch, job).on(page));
        return page.signatures("Pre-treated by", "Masked by");
    }

    private void on(PageBuilder page) {
        String finish = batch.finish().says().in(job.workshop().language());
        page.heading("Batch " + batch.number() + ": " + finish).add(particulars());
        if (!batch.rows().isEmpty()) {
            page.add(coats());
            notes().forEach(page::note);
            page.add(about(PartsTable.compose(batch.rows(), BY_HAND)));
        }
        if (!batch.tooBig().isEmpty()) {
            page.heading("Too large for the oven, in no load and no figure above")
                    .add(about(TOO_BIG.of(batch.tooBig())));
        }
    }

    private TableBuilder about(TableBuilder table) {
        return table.about("batch", batch.number());
    }

    private ParticularsBuilder particulars() {
        return Particulars.named("batch-" + batch.number())
                .say("where", "Where", batch.oven().says())
                .say("need", "In store by", CoatWords.day(batch.needBy()))
                .say("pre-treatment", "Pre-treatment", batch.finish().preTreatment())
                .say("cure", "Cure", CoatWords.cures(batch.finish()))
                .say("mass", "Bare mass, kg", Kind.decimal(1), batch.kg());
    }

    /** From the metal outwards: film and cure window, and the runs they are sprayed in. */
    private TableBuilder coats() {
        List<PowderCoat> coats = batch.finish().coats();
        List<Pass> passes = Sprays.passes(batch);
        TableBuilder table = TableSpec.<Pass>named("coats")
                .text("coat", "Coat", pass -> pass.coat() + " of " + coats.size())
                .text("run", "In run", this::runs)
                .text("powder", "Powder", pass -> pass.powder().powder())
                .text("says", "Kind", 30, pass -> kind(pass.powder()))
                .whole("min", "Film min", "µm", pass -> pass.powder().filmMinUm())
                .whole("target", "Film target", "µm", pass -> pass.powder().filmTargetUm())
                .whole("max", "Film max", "µm", pass -> pass.powder().filmMaxUm())
                .whole("metal", "Metal", "°C", pass -> pass.powder().cureMetalC())
                .whole("dwell", "Dwell", "min", pass -> pass.powder().cureMinutes())
                .decimal("film", "Powder on parts", "kg", 3, pass -> batch.filmKg(pass.powder()))
                .besideThePaper()
                .decimal(
                        "utilisation",
                        "Transfer efficiency",
                        "%",
                        0,
                        pass -> pass.powder().utilisationPercent())
                .of(passes);
        if (coats.size() > 1) {
            BigDecimal all = coats.stream().map(batch::filmKg).reduce(BigDecimal.ZERO, BigDecimal::add);
            table.total("total", "All coats").sum("film", all);
        }
        return about(table);
    }

    private String runs(Pass wanted) {
        return job.plan().runs().stream()
                .filter(run -> run.passes().stream().anyMatch(wanted::same))
                .map(run -> String.valueOf(run.number()))
                .collect(Collectors.joining(", "));
    }

    private String kind(PowderCoat coat) {
        Powder powder = job.shop().powders().get(coat.powder());
        return powder == null ? "" : powder.says();
    }

    /** What is worth saying about masks and threads. */
    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        int coats = batch.finish().coats().size();
        int masks = PartsTable.masks(batch.rows());
        if (coats > 1 && masks > 0) {
            notes.add(
                    "Masks are fitted anew for each coat: " + masks + " places, " + masks * coats
                            + " fittings. Take them off when the coat below is cured and cool, and look for powder under them.");
        }
        if (has(feature -> feature.kind() == Feature.Kind.FACE)) {
            notes.add(FACES);
        }
        if (has(CoatWords::chased)) {
            int um = batch.finish().coats().stream()
                    .mapToInt(PowderCoat::filmTargetUm)
                    .sum();
            notes.add(um + " µm of film take a thread's pitch diameter " + Digits.plain(FilmGrowth.threadMm(um))
                    + " mm out of its size: chase the threads that the remark names, after the last coat, and try them"
                    + " with a gauge.");
        }
        return notes;
    }

    private boolean has(Predicate<Feature> wanted) {
        return batch.rows().stream()
                .anyMatch(row -> row.coat().features().stream().anyMatch(wanted));
    }
}
