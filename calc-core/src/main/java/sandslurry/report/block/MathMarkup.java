package sandslurry.report.block;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sandslurry.fact.step.Expression;
import sandslurry.fact.step.Expression.Case;
import sandslurry.fact.step.Expression.Comparison;

/**
 * Writes an equation as MathML: fractions, powers, roots, subscripts and Greek letters. Browsers
 * set it; the sheet of styles for pages sets the same elements on paper, with the Greek letters of
 * the font that every reader of PDF has (which has the micro sign for a mu).
 */
final class MathMarkup implements Expression.Form<MathMarkup.Piece> {
  /**
   * A part of an equation.
   *
   * @param markup as it stands beside others
   * @param bare without brackets, where a line or a root groups instead
   * @param raised without brackets and with its fraction in one line, as an exponent
   */
  record Piece(String markup, String bare, String raised) {
    private static Piece of(String markup) {
      return new Piece(markup, markup, markup);
    }
  }

  private static final Map<String, String> GREEK =
      Map.ofEntries(
          Map.entry("alpha", "\u03b1"),
          Map.entry("beta", "\u03b2"),
          Map.entry("gamma", "\u03b3"),
          Map.entry("delta", "\u03b4"),
          Map.entry("Delta", "\u2206"),
          Map.entry("epsilon", "\u03b5"),
          Map.entry("eta", "\u03b7"),
          Map.entry("theta", "\u03b8"),
          Map.entry("kappa", "\u03ba"),
          Map.entry("lambda", "\u03bb"),
          Map.entry("mu", "\u00b5"),
          Map.entry("nu", "\u03bd"),
          Map.entry("xi", "\u03be"),
          Map.entry("pi", "\u03c0"),
          Map.entry("rho", "\u03c1"),
          Map.entry("sigma", "\u03c3"),
          Map.entry("Sigma", "\u03a3"),
          Map.entry("tau", "\u03c4"),
          Map.entry("phi", "\u03c6"),
          Map.entry("psi", "\u03c8"),
          Map.entry("omega", "\u03c9"));

  /** A name, then what is set below the line: after a bar, or digits at the end. */
  private static final Pattern NAME = Pattern.compile("(\\p{L}+?)(?:_?(\\d\\w*)|_(\\w+))?([*']*)");

  /** Markup that begins with a number, which would run into a number before it. */
  private static final Pattern FIGURE = Pattern.compile("(<m(row|sup|frac)>)*<mn>");

  private static final Piece HALF = Piece.of("<mn>1</mn>" + operator("/") + "<mn>2</mn>");

  private MathMarkup() {}

  /**
   * The equation.
   *
   * @param symbol the symbol of its left side
   * @param text its right side
   * @return the markup
   */
  static String of(String symbol, String text) {
    MathMarkup markup = new MathMarkup();
    return "<math displaystyle=\"true\">"
        + markup.symbol(symbol, "").markup()
        + operator("=")
        + Expression.read(text, markup).markup()
        + "</math>";
  }

  /**
   * A symbol alone.
   *
   * @param symbol the symbol
   * @return the markup
   */
  static String of(String symbol) {
    return "<math>" + new MathMarkup().symbol(symbol, "").markup() + "</math>";
  }

  private static String row(String markup) {
    return "<mrow>" + markup + "</mrow>";
  }

  private static String operator(String sign) {
    return "<mo>" + sign + "</mo>";
  }

  /** Brackets around a part, as tall as a fraction in it and else as letters. */
  private static String bracketed(char open, String inside) {
    String as = inside.contains("<mfrac>") ? "" : " stretchy=\"false\"";
    char close = ")]}".charAt("([{".indexOf(open));
    return row(
        "<mo class=\"near\""
            + as
            + ">"
            + open
            + "</mo>"
            + inside
            + "<mo class=\"near\""
            + as
            + ">"
            + close
            + "</mo>");
  }

  private static String letters(String name) {
    String greek = GREEK.get(name);
    return greek != null
        ? "<mi class=\"greek\">" + greek + "</mi>"
        : "<mi" + (name.length() > 1 ? " class=\"upright\"" : "") + ">" + name + "</mi>";
  }

  @Override
  public Piece number(String text) {
    int power = text.toLowerCase(Locale.ROOT).indexOf('e');
    if (power < 0) {
      return Piece.of("<mn>" + text + "</mn>");
    }
    return Piece.of(
        row(
            "<mn>"
                + text.substring(0, power)
                + "</mn>"
                + operator("&#215;")
                + "<msup><mn>10</mn>"
                + exponent(Integer.parseInt(text.substring(power + 1)))
                + "</msup>"));
  }

  private static String exponent(int power) {
    String digits = "<mn>" + Math.abs(power) + "</mn>";
    return power < 0 ? row("<mo class=\"near\">&#8722;</mo>" + digits) : digits;
  }

  @Override
  public Piece symbol(String name, String unit) {
    Matcher parts = NAME.matcher(name);
    String markup;
    if (parts.matches()) {
      String below = parts.group(2) == null ? parts.group(3) : parts.group(2);
      markup = letters(parts.group(1));
      if (below != null) {
        markup = "<msub>" + markup + row(below(below)) + "</msub>";
      }
      if (!parts.group(4).isEmpty()) {
        markup = row(markup + "<mo class=\"near\">" + parts.group(4) + "</mo>");
      }
    } else {
      markup = "<mi class=\"upright\">" + HtmlBody.escape(name) + "</mi>";
    }
    return Piece.of(
        unit.isEmpty()
            ? markup
            : row(markup + "<mtext class=\"unit\">[" + HtmlBody.escape(unit) + "]</mtext>"));
  }

  private static String below(String text) {
    String greek = GREEK.get(text);
    return greek == null
        ? "<mtext>" + text.replace('_', ',') + "</mtext>"
        : "<mi class=\"greek\">" + greek + "</mi>";
  }

  @Override
  public Piece group(char open, Piece inside) {
    return new Piece(bracketed(open, inside.markup()), inside.markup(), inside.raised());
  }

  @Override
  public Piece sum(Piece left, boolean plus, Piece right) {
    return Piece.of(left.markup() + operator(plus ? "+" : "&#8722;") + right.markup());
  }

  @Override
  public Piece minus(Piece of) {
    return Piece.of(row("<mo class=\"near\">&#8722;</mo>" + of.markup()));
  }

  @Override
  public Piece product(Piece left, Piece right) {
    boolean numbers = left.markup().endsWith("</mn>") && FIGURE.matcher(right.markup()).lookingAt();
    return Piece.of(
        left.markup()
            + (numbers ? operator("&#215;") : "<mspace width=\"0.17em\"></mspace>")
            + right.markup());
  }

  @Override
  public Piece quotient(Piece top, Piece bottom) {
    String markup = "<mfrac>" + row(top.bare()) + row(bottom.bare()) + "</mfrac>";
    return new Piece(markup, markup, row(top.markup() + operator("/") + bottom.markup()));
  }

  @Override
  public Piece power(Piece base, Piece exponent) {
    return Piece.of("<msup>" + row(base.markup()) + row(exponent.raised()) + "</msup>");
  }

  @Override
  public Piece function(String name, List<Piece> of) {
    if (name.equals("sqrt")) {
      Piece inside = of.get(0);
      // On paper the line of a root stands as high as letters and would cross a fraction.
      return inside.bare().contains("<mfrac>")
          ? power(group('(', Piece.of(inside.bare())), HALF)
          : Piece.of("<msqrt>" + row(inside.bare()) + "</msqrt>");
    }
    StringBuilder inside = new StringBuilder();
    for (Piece one : of) {
      inside.append(inside.length() > 0 ? operator(",") : "").append(one.markup());
    }
    String sign =
        name.equals("log10") ? "<msub><mi class=\"upright\">log</mi><mn>10</mn></msub>" : null;
    return Piece.of(
        (sign == null ? "<mi class=\"upright\">" + name + "</mi>" : sign)
            + bracketed('(', inside.toString()));
  }

  @Override
  public Piece choice(List<Case<Piece>> cases) {
    StringBuilder rows = new StringBuilder();
    for (Case<Piece> one : cases) {
      StringBuilder when = new StringBuilder();
      for (Comparison<Piece> comparison : one.when()) {
        when.append(
                when.length() == 0 ? "<mtext>for&#160;</mtext>" : "<mtext>&#160;and&#160;</mtext>")
            .append(comparison.left().markup())
            .append(operator(sign(comparison.sign())))
            .append(comparison.right().markup());
      }
      rows.append(rows.length() == 0 ? "" : "<mtext>;&#160; </mtext>")
          .append(when.length() == 0 ? "<mtext>else&#160; </mtext>" : "")
          .append(one.value().markup())
          .append(when.length() == 0 ? "" : "<mtext>&#160; </mtext>" + when);
    }
    return Piece.of(rows.toString());
  }

  private static String sign(String sign) {
    return switch (sign) {
      case "<" -> "&lt;";
      case "<=" -> "&#8804;";
      case ">" -> "&gt;";
      default -> "&#8805;";
    };
  }
}
