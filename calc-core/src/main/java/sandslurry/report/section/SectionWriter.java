package sandslurry.report.section;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sandslurry.report.block.Block;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What every chapter of the report needs: its blocks, and numbers in the units of the design. */
interface SectionWriter {
  /** Of more names that share a row only the first is shown. */
  int MOST_NAMES = 4;

  /** What takes the blocks. */
  Page page();

  /** The units of the report. */
  default UnitSystem units() {
    return page().units();
  }

  default void add(Block block) {
    page().blocks().add(block);
  }

  default void heading(int level, String text) {
    add(new Block.Heading(level, text));
  }

  default void paragraph(String text) {
    add(new Block.Paragraph(text));
  }

  /** A table of several things, a row each. */
  default <T> void tableOf(List<T> things, List<Column<T>> columns) {
    add(Column.table(things, columns, units()));
  }

  /**
   * A table of several things that begins with their names: those that show the same share a row.
   */
  default <T> void alikeOf(List<T> things, List<Column<T>> columns) {
    Block.Table all = Column.table(things, columns, units());
    alike(all.head(), all.rows());
  }

  /** Rows that begin with a name: those that are the same but for it share a row. */
  default void alike(List<String> head, List<List<String>> rows) {
    Map<List<String>, List<String>> names = new LinkedHashMap<>();
    for (List<String> row : rows) {
      names.computeIfAbsent(row.subList(1, row.size()), r -> new ArrayList<>()).add(row.get(0));
    }
    List<List<String>> shown = new ArrayList<>();
    names.forEach(
        (cells, those) -> {
          List<String> row = new ArrayList<>(List.of(few(those)));
          row.addAll(cells);
          shown.add(row);
        });
    table(head, shown);
  }

  /** Names beside each other; of many the first. */
  static String few(List<String> names) {
    return few(names, MOST_NAMES, ", ");
  }

  /** Names beside each other; of more than so many the first. */
  static String few(Collection<String> names, int most, String between) {
    return names.size() > most
        ? names.iterator().next() + " and " + (names.size() - 1) + " more like it"
        : String.join(between, names);
  }

  /** A table of what is known of one thing, a row each. */
  default <T> void facts(T thing, List<Column<T>> columns) {
    add(Column.facts(thing, columns, units()));
  }

  default void table(List<String> head, List<List<String>> rows) {
    add(new Block.Table(head, rows));
  }

  default String show(Kind<?> kind, double si) {
    return units().show(kind, si);
  }

  default String number(Kind<?> kind, double si) {
    return units().number(kind, si);
  }

  /** A heading of a table with the unit of what stands below it. */
  default String head(String text, Kind<?> kind) {
    String symbol = kind.symbol(units());
    return symbol.isEmpty() ? text : text + " [" + symbol + "]";
  }

  default String plain(double factor) {
    return String.format(Locale.ROOT, "%.2g", factor);
  }
}
