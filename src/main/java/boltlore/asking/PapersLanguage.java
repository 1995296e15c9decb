package boltlore.asking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Partner;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.util.Optional;

/**
 * In which language an order's papers are: what is chosen for labels and manuals decides, where the workshop writes that
 * language, else the partner's. It follows where one of them changes; what is said between stays.
 */
public record PapersLanguage(Catalogue catalogue) {

    /** The order with other choices. */
    public Order following(Choices before, Choices after, Order order) {
        Optional<OptionValue> now = after.inRole(Role.LANGUAGE);
        return now.equals(before.inRole(Role.LANGUAGE)) ? order : in(order, after);
    }

    /** The order through another partner. */
    public Order through(String partner, Order order) {
        Order through = new OrderBuilder(order).partner(partner).build();
        boolean chosen = chosen(order.choices()).isPresent();
        return chosen || ofPartner(through).isEmpty() ? through : in(through, order.choices());
    }

    private Order in(Order order, Choices choices) {
        String language = chosen(choices).or(() -> ofPartner(order)).orElse("en");
        return new OrderBuilder(order).language(language).build();
    }

    private Optional<String> chosen(Choices choices) {
        return choices.inRole(Role.LANGUAGE).map(OptionValue::value).filter(this::isWritten);
    }

    private Optional<String> ofPartner(Order order) {
        return Optional.ofNullable(catalogue.workshop().partners().get(order.partner()))
                .map(Partner::language)
                .filter(this::isWritten);
    }

    private boolean isWritten(String language) {
        return catalogue.workshop().languages().contains(language);
    }
}
