package boltlore.trades.coating;

import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Coater;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Oven;
import boltlore.catalogue.TooLarge;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Sorts rows into batches for own ovens and send-outs, adding to those that are there already. */
final class BatchMaker {

    private final CoatingShop shop;
    private final Numbers numbers;
    private final List<OvenBatch> own = new ArrayList<>();
    private final List<SendOut> out = new ArrayList<>();

    BatchMaker(CoatingShop shop, Numbers numbers) {
        this.shop = shop;
        this.numbers = numbers;
    }

    /** Goes on from what a round holds. */
    BatchMaker(CoatingShop shop, Numbers numbers, Round round) {
        this(shop, numbers);
        own.addAll(round.batches());
        out.addAll(round.sendOuts());
    }

    List<OvenBatch> own() {
        return List.copyOf(own);
    }

    List<SendOut> out() {
        return List.copyOf(out);
    }

    /** One batch for each finish, which stands for its place, powders and cure windows; earliest need first. */
    void add(List<BatchRow> rows) {
        SortedSet<String> finishes = new TreeSet<>();
        rows.forEach(row -> finishes.add(row.finish().name()));
        List<List<BatchRow>> groups = finishes.stream()
                .map(finish -> rows.stream()
                        .filter(row -> row.finish().name().equals(finish))
                        .toList())
                .sorted(Comparator.comparing(BatchRow::earliestNeed, BatchRow.EARLIEST))
                .toList();
        groups.forEach(this::toOven);
        groups.forEach(this::toCoater);
    }

    private void toOven(List<BatchRow> group) {
        Finish finish = group.get(0).finish();
        if (finish.where() instanceof CoatedWhere.OwnOven place) {
            Oven oven = known(shop.ovens().get(place.oven()), place.oven());
            List<BatchRow> fitting =
                    group.stream().filter(row -> TooBig.of(row, oven).isEmpty()).toList();
            List<TooBig> tooBig = oven.tooLarge() == null ? tooBig(group, oven) : List.of();
            if (!fitting.isEmpty() || !tooBig.isEmpty()) {
                put(finish, oven, fitting, tooBig);
            }
        }
    }

    private void put(Finish finish, Oven oven, List<BatchRow> rows, List<TooBig> tooBig) {
        for (int i = 0; i < own.size(); i++) {
            if (own.get(i).finish().name().equals(finish.name())) {
                own.set(i, own.get(i).with(rows, tooBig));
                return;
            }
        }
        own.add(new OvenBatch(numbers.batch(), finish, oven, rows, tooBig));
    }

    private void toCoater(List<BatchRow> group) {
        CoatedWhere where = group.get(0).finish().where();
        if (where instanceof CoatedWhere.OutsideByArea byArea) {
            send(byArea.coater(), group, List.of());
        } else if (where instanceof CoatedWhere.OutsideByPiece byPiece) {
            send(byPiece.coater(), group, List.of());
        } else if (where instanceof CoatedWhere.OwnOven place) {
            Oven oven = known(shop.ovens().get(place.oven()), place.oven());
            TooLarge tooLarge = oven.tooLarge();
            List<TooBig> tooBig = tooBig(group, oven);
            if (tooLarge != null && !tooBig.isEmpty()) {
                send(tooLarge.coater(), tooBig.stream().map(TooBig::row).toList(), tooBig);
            }
        }
    }

    private void send(String coaterName, List<BatchRow> group, List<TooBig> tooBig) {
        Coater coater = known(shop.coaters().get(coaterName), coaterName);
        Finish finish = group.get(0).finish();
        for (int i = 0; i < out.size(); i++) {
            SendOut there = out.get(i);
            if (there.finish().name().equals(finish.name())) {
                out.set(
                        i,
                        sendOut(there.number(), coater, joined(there.rows(), group), joined(there.tooBig(), tooBig)));
                return;
            }
        }
        out.add(sendOut(numbers.batch(), coater, group, tooBig));
    }

    private SendOut sendOut(int number, Coater coater, List<BatchRow> rows, List<TooBig> tooBig) {
        List<BatchRow> merged = BatchRow.merged(rows);
        BigDecimal price = merged.stream().map(this::price).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new SendOut(number, rows.get(0).finish(), coater, merged, tooBig, price);
    }

    private BigDecimal price(BatchRow row) {
        BigDecimal each = CoatingCost.outside(row.areaEachM2(), row.massKg(), row.finish(), shop);
        return each.multiply(BigDecimal.valueOf(row.pieces()));
    }

    private static List<TooBig> tooBig(List<BatchRow> group, Oven oven) {
        return group.stream()
                .map(row -> TooBig.of(row, oven))
                .flatMap(Optional::stream)
                .toList();
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }

    private static <T> T known(@Nullable T found, String name) {
        if (found == null) {
            throw new IllegalArgumentException("The coating shop does not know " + name);
        }
        return found;
    }
}
