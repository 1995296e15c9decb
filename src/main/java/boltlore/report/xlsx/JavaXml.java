package boltlore.report.xlsx;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.TransformerFactory;

/** Java's own XML tools, by which POI writes the parts that are its own. */
final class JavaXml {

    private JavaXml() {}

    /** Names them unless the user has named others: POI would else search every library for some, for each part anew. */
    static void choose() {
        choose(TransformerFactory.class, TransformerFactory.newDefaultInstance());
        choose(DocumentBuilderFactory.class, DocumentBuilderFactory.newDefaultInstance());
    }

    private static void choose(Class<?> kind, Object own) {
        if (System.getProperty(kind.getName()) == null) {
            System.setProperty(kind.getName(), own.getClass().getName());
        }
    }
}
