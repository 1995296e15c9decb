package boltlore.report.xlsx;

import boltlore.report.Report;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathExpressionException;
import javax.xml.xpath.XPathFactory;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** A written workbook, opened as what it is: XML files in a zip. */
final class Opened {

    private final Map<String, byte[]> parts = new TreeMap<>();

    private Opened(byte[] xlsx) {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(xlsx))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), zip.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static byte[] bytes(Report report) {
        return new XlsxWriter().write(report).get(0).content();
    }

    static Opened of(Report report) {
        return new Opened(bytes(report));
    }

    Iterable<String> names() {
        return parts.keySet();
    }

    Document part(String name) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            return factory.newDocumentBuilder().parse(new ByteArrayInputStream(parts.get(name)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new IllegalStateException(name, e);
        }
    }

    /** Text of all nodes that the path finds; element names are without name spaces' meaning, as they are written. */
    List<String> find(String part, String path) {
        try {
            NodeList nodes =
                    (NodeList) XPathFactory.newInstance().newXPath().evaluate(path, part(part), XPathConstants.NODESET);
            List<String> texts = new ArrayList<>();
            for (int i = 0; i < nodes.getLength(); i++) {
                texts.add(nodes.item(i).getTextContent());
            }
            return texts;
        } catch (XPathExpressionException e) {
            throw new IllegalArgumentException(path, e);
        }
    }
}
