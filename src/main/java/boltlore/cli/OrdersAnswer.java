package boltlore.cli;

import boltlore.json.JsonOut;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;

/** What programs are told about several orders: the files that were written, then each order. */
final class OrdersAnswer {

    private OrdersAnswer() {}

    static <T> String json(List<T> orders, List<Path> written, Function<T, JsonOut> order) {
        return JsonOut.object()
                .put("written", JsonOut.texts(written))
                .put("orders", JsonOut.list(orders, order))
                .written()
                .stripTrailing();
    }
}
