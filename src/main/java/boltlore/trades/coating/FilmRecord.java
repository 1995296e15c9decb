package boltlore.trades.coating;

import boltlore.json.JsonOut;
import boltlore.report.SheetFile;
import java.util.List;

/** The record that programs fill in, as JSON; as CSV it is the table of the film pages. */
final class FilmRecord {

    static final String JSON = "json/" + CoatSheet.FILE + "-record.json";

    private FilmRecord() {}

    /** Nothing where nothing is coated in our own ovens. */
    static List<SheetFile> write(CoatJob job) {
        List<JsonOut> readings = job.plan().batches().stream()
                .flatMap(batch -> FilmPiece.of(batch).stream().map(piece -> reading(batch, piece, job.again())))
                .toList();
        List<JsonOut> issued =
                job.plan().runs().stream().map(FilmRecord::issued).toList();
        JsonOut.Members record =
                JsonOut.object().put("readings", JsonOut.list(readings)).put("issued", JsonOut.list(issued));
        return readings.isEmpty() ? List.of() : List.of(SheetFile.utf8(JSON, record.written()));
    }

    /** Without its kg, which are put in. */
    private static JsonOut issued(PowderRun run) {
        return JsonOut.object().put("run", run.number()).put("code", CoatCodes.run(run));
    }

    private static JsonOut reading(OvenBatch batch, FilmPiece piece, Again again) {
        return JsonOut.object()
                .put("batch", batch.number())
                .put("lot", CoatCodes.lot(batch))
                .put("finish", batch.finish().says().english())
                .put("limits", CoatCodes.limits(batch.finish()))
                .put("part", piece.row().part().number().text())
                .put("piece", piece.mark())
                .put("coating", again.coating(piece.row(), piece.mark()))
                .put("um", JsonOut.list(List.of()));
    }
}
