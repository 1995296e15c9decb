package boltlore.trades.coating;

import boltlore.catalogue.Finish;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Codes that bind what the coating shop writes down to what it was written for: they change with that and with nothing
 * else, wherever it stands in a plan. A letter leads, so that no spreadsheet program takes them for numbers.
 */
final class CoatCodes {

    private static final int DIGITS = 12;

    private CoatCodes() {}

    /** Of the film that a finish asks for: its name, the powder and film of each coat, and how readings are judged. */
    static String limits(Finish finish) {
        String coats = finish.coats().stream()
                .map(coat -> coat.powder() + ' ' + coat.filmMinUm() + ' ' + coat.filmMaxUm())
                .collect(Collectors.joining(";"));
        FilmDemand demand = FilmDemand.of(finish);
        return code(
                "F",
                finish.name()
                        + ';'
                        + coats
                        + ';'
                        + FilmAcceptance.READINGS
                        + ' '
                        + demand.acceptance().floorUm());
    }

    /** Of what is coated together: the film, and each piece of each part. */
    static String lot(OvenBatch batch) {
        return code("C", limits(batch.finish()) + pieces(batch.rows()));
    }

    /** Of a run: its powder, and what it is sprayed on. */
    static String run(PowderRun run) {
        String passes = run.passes().stream()
                .map(pass -> lot(pass.batch()) + ' ' + pass.coat())
                .collect(Collectors.joining(";"));
        return code("P", run.powder() + ';' + passes);
    }

    private static String pieces(List<BatchRow> rows) {
        return rows.stream()
                .flatMap(row -> row.marks().stream().map(mark -> row.part().number() + " " + mark.written()))
                .sorted()
                .collect(Collectors.joining(";"));
    }

    private static String code(String letter, String of) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(of.getBytes(StandardCharsets.UTF_8));
            return letter + HexFormat.of().formatHex(hash).substring(0, DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
