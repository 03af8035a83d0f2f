package sandslurry.report.figure;

import sandslurry.units.Kind;

/**
 * One number of a result, for other programs: what it is, where and when it holds, and its value in
 * SI with its range.
 *
 * @param id what it is, for a program; never changes
 * @param label what it is, in the trade's words
 * @param element the part that it belongs to, such as a run of pipe
 * @param at the flow rate or state at which it holds; empty where it holds at all
 * @param kind how it is shown
 * @param low its least value in SI
 * @param value its expected value in SI
 * @param high its greatest value in SI
 */
public record ReportFigure(
    String id,
    String label,
    String element,
    String at,
    Kind<?> kind,
    double low,
    double value,
    double high) {
  /**
   * The same of one of several lines.
   *
   * @param line name of the line
   * @return the number, whose element names the line
   */
  public ReportFigure of(String line) {
    String part = element.equals("line") ? line : line + ", " + element;
    return new ReportFigure(id, label, part, at, kind, low, value, high);
  }

  /**
   * Its unit in SI.
   *
   * @return the symbol; 1 for a pure number or a share
   */
  public String unit() {
    String symbol = kind.measure().units().get(0).symbol();
    return symbol.isEmpty() ? "1" : symbol;
  }
}
