package boltlore.bring;
import java.nio.file.*;
import java.util.*;
public class Dump {
  public static void main(String[] a) throws Exception {
    System.setOut(new java.io.PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.out), true, "UTF-8"));
    for (String f : a) {
      var o = OpenedFile.read(f, Files.readAllBytes(Path.of(f)), null);
      System.out.println("##### " + f + " " + o.faults());
      if (!o.faults().isEmpty()) continue;
      var file = ((boltlore.faults.Outcome.Sound<OpenedFile>) o).value();
      System.out.println(file.encoding() + " " + file.encodingSure());
      for (var s : file.sheets()) {
        System.out.println("=== sheet " + s.name() + (s.hidden() ? " HIDDEN" : "") + (s.filtered() ? " filtered" : "") + " rows " + s.rows().size());
        for (var t : Lists.read(s, Mapping.empty("x"), file.commaLikely())) {
          System.out.println("--- table head " + t.table().firstHead() + " rows " + t.table().firstRow() + ".." + t.table().lastRow() + " sure " + t.table().sure() + " comma " + t.decimalComma());
          for (var c : t.columns()) System.out.println("   " + boltlore.grid.Sheet.letters(c.at()) + " '" + c.heading() + "' [" + t.table().group(c.at()) + "] " + c.role() + (c.sure() ? "" : " ?") + " " + c.option() + "=" + c.value() + " : " + c.because());
          java.math.BigDecimal sum = t.entries().stream().filter(e -> e.quantity() != null).map(e -> e.quantity().number()).reduce(java.math.BigDecimal.ZERO, java.math.BigDecimal::add);
          var vs = new TreeMap<Integer, java.math.BigDecimal>();
          t.entries().forEach(e -> e.values().forEach((k, v) -> vs.merge(k, v.number(), java.math.BigDecimal::add)));
          System.out.println("   entries " + t.entries().size() + " sum " + sum + " " + vs + " alternates " + t.entries().stream().filter(Entry::alternate).count());
          if (System.getProperty("full") != null) t.entries().forEach(e -> System.out.println("     e " + e));
          t.left().forEach(l -> System.out.println("     left " + l));
          t.doubts().forEach(d -> System.out.println("     " + (d.open() ? "ASK " : "note") + " " + d.at() + " " + d.says()));
        }
      }
    }
  }
}
