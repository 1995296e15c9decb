package boltlore.measure;

/**
 * Where cost and risk pass to the buyer, by a rule of Incoterms 2020 (International Chamber of Commerce, publication 723)
 * and its named place.
 */
public record DeliveryTerm(Rule rule, String place) {

    /** The eleven rules; the last four are for sea and inland waterway only. */
    public enum Rule {
        EXW,
        FCA,
        CPT,
        CIP,
        DAP,
        DPU,
        DDP,
        FAS,
        FOB,
        CFR,
        CIF;

        public boolean bySeaOnly() {
            return compareTo(FAS) >= 0;
        }
    }

    /** 'FCA Ostrevale, Incoterms 2020'. */
    public String says() {
        return rule + " " + place + ", Incoterms 2020";
    }
}
