package boltlore.cli;

import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import boltlore.choosing.Importance;
import boltlore.exports.Exports;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.OrderTerms;
import boltlore.order.json.OrderReader;
import boltlore.order.json.OrderWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Asks for what an order says beside its choices, and writes its file whole or not at all. */
final class OrderAsked {

    private final Dialogue dialogue;
    private final Bench bench;
    private final OrderHead head;

    OrderAsked(Dialogue dialogue, Bench bench, OrderHead head) {
        this.dialogue = dialogue;
        this.bench = bench;
        this.head = head;
    }

    Outcome<Integer> write(Choices choices, Importance importance) {
        Optional<String> number = given(head.order(), "Order number?");
        Optional<String> customer = number.flatMap(same -> given(head.customer(), "Customer?"));
        if (number.isEmpty() || customer.isEmpty()) {
            dialogue.screen().wrapped(0, "Nothing was written: the order has no number or customer.");
            return Outcome.sound(Exit.STOPPED);
        }
        Order order = order(number.get(), customer.get(), choices, importance);
        byte[] text = OrderWriter.write(order).getBytes(StandardCharsets.UTF_8);
        return OrderReader.parse("", text, bench.catalogue()).then(read -> write(file(order), text));
    }

    private Optional<String> given(@Nullable String known, String prompt) {
        return known != null ? Optional.of(known) : dialogue.ask(prompt);
    }

    private Path file(Order order) {
        Path out = head.out();
        return out != null ? out : Path.of(order.name().toLowerCase(Locale.ROOT) + ".json");
    }

    private Outcome<Integer> write(Path file, byte[] text) {
        if (Files.exists(file)) {
            return Outcome.faulty(Fault.of(
                    file.toString(), "a file that exists", "a new file", "Name another with --out, or move this one."));
        }
        return Exports.newFile(file, text).then(written -> {
            dialogue.screen().wrapped(0, "Written: " + written + ". 'boltlore kit " + written + "' makes its sheets.");
            return Outcome.sound(Exit.OK);
        });
    }

    private Order order(String number, String customer, Choices choices, Importance importance) {
        return new Order(
                number,
                choices.family().name(),
                customer,
                "",
                language(choices),
                head.built(),
                head.placed(),
                null,
                choices,
                new TreeSet<>(),
                new TreeSet<>(importance.firm()),
                importance.rank(),
                new LeftOut.Undecided(),
                List.of(),
                List.of(),
                "",
                OrderTerms.NONE);
    }

    /** The language of labels and manuals is that of the papers too, where the workshop writes it. */
    private String language(Choices choices) {
        return choices.inRole(Role.LANGUAGE)
                .map(OptionValue::value)
                .filter(bench.catalogue().workshop().languages()::contains)
                .orElse("en");
    }
}
