package boltlore.trades;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Partner;
import boltlore.measure.Party;
import boltlore.order.Order;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Who sells and sends an order's kit, who receives and who pays: what the order says, else what is known of its partner,
 * so that nobody writes one address twice.
 *
 * @param seller the workshop; without an address where shipping.json does not say it
 */
public record Parties(Party seller, Optional<Party> consignee, Optional<Party> buyer) {

    public static Parties of(Order order, Catalogue catalogue) {
        return of(
                order,
                catalogue
                        .shipping()
                        .consignor()
                        .at()
                        .called(catalogue.workshop().name()),
                catalogue.workshop().partners().get(order.partner()));
    }

    private static Parties of(Order order, Party seller, @Nullable Partner partner) {
        Party consignee = order.addresses().consignee();
        Party invoice = order.addresses().invoice();
        Party ofPartner = partner == null || !partner.consignee().isKnown() ? null : partner.consignee();
        return new Parties(seller, first(consignee, ofPartner, invoice), first(invoice, ofPartner, consignee));
    }

    private static Optional<Party> first(@Nullable Party... parties) {
        return Stream.of(parties).filter(Objects::nonNull).findFirst();
    }
}
