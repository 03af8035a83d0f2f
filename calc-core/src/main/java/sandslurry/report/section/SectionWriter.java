package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sandslurry.report.block.Block;
import sandslurry.report.figure.Column;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What every chapter of the report needs: its blocks, and numbers in the units of the design. */
abstract class SectionWriter {
  /** The units of the report. */
  final UnitSystem units;

  private final List<Block> blocks = new ArrayList<>();

  SectionWriter(UnitSystem units) {
    this.units = units;
  }

  public final List<Block> blocks() {
    return List.copyOf(blocks);
  }

  final void add(Block block) {
    blocks.add(block);
  }

  final void heading(int level, String text) {
    add(new Block.Heading(level, text));
  }

  final void paragraph(String text) {
    add(new Block.Paragraph(text));
  }

  /** A table of several things, a row each. */
  final <T> void tableOf(List<T> things, List<Column<T>> columns) {
    add(Column.table(things, columns, units));
  }

  final void table(List<String> head, List<List<String>> rows) {
    add(new Block.Table(head, rows));
  }

  final String show(Kind<?> kind, double si) {
    return units.show(kind, si);
  }

  final String number(Kind<?> kind, double si) {
    return units.number(kind, si);
  }

  /** A heading of a table with the unit of what stands below it. */
  final String head(String text, Kind<?> kind) {
    String symbol = kind.symbol(units);
    return symbol.isEmpty() ? text : text + " [" + symbol + "]";
  }

  static List<String> row(String what, String value) {
    return List.of(what, value);
  }

  static String plain(double factor) {
    return String.format(Locale.ROOT, "%.2g", factor);
  }
}
