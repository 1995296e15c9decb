package boltlore.exports;

/** A file by its name, with '/' between the steps, and its content's print. */
record Named(String name, Print print) {

    /** {@code csv/bill.csv} itself the first time, then {@code csv/bill.new.csv}, {@code csv/bill.new-2.csv} and so on. */
    static String beside(String name, String word, int time) {
        if (time == 0) {
            return name;
        }
        int dot = name.lastIndexOf('.');
        int end = dot > name.lastIndexOf('/') + 1 ? dot : name.length();
        return name.substring(0, end) + "." + word + (time == 1 ? "" : "-" + time) + name.substring(end);
    }
}
