package boltlore.catalogue;

/** The drawing that a part is made to, with its issue. */
public record Drawing(String number, String issue) {

    /** Both in one: 'D-PV-142 B'. */
    public String shown() {
        return number + " " + issue;
    }
}
