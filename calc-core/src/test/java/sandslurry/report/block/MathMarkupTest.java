package sandslurry.report.block;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;
import sandslurry.assessment.Assessment;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Step;
import sandslurry.golden.Shipped;

/** Equations are set as in a book, and say the same as their plain text. */
class MathMarkupTest {
  private static final Pattern NUMBER =
      Pattern.compile("(?<![\\p{L}_\\d.])\\d+\\.?\\d*(?![\\d.eE])");

  @Test
  void aQuotientIsAFractionWithoutItsBrackets() {
    assertThat(MathMarkup.of("v_0", "Q / (L b)"))
        .contains("<msub><mi>v</mi><mrow><mtext>0</mtext></mrow></msub>")
        .contains("<mfrac><mrow><mi>Q</mi></mrow><mrow><mi>L</mi>")
        .doesNotContain(">(</mo>");
  }

  @Test
  void aFactorKeepsItsBracketsAndARootDropsThem() {
    assertThat(MathMarkup.of("V", "sqrt((s - 1) g)")).contains("<msqrt>", ">(</mo>", ">)</mo>");
    assertThat(MathMarkup.of("V", "sqrt(s)")).doesNotContain(">(</mo>");
  }

  @Test
  void aRootOfAFractionIsAPowerOfOneHalf() {
    assertThat(MathMarkup.of("V", "w sqrt(8/f)"))
        .contains("<mfrac>", "<mn>1</mn><mo>/</mo><mn>2</mn>")
        .doesNotContain("<msqrt>");
  }

  @Test
  void anExponentStaysInOneLine() {
    assertThat(MathMarkup.of("d_n", "d (g/nu^2)^(1/3)"))
        .contains("<mn>1</mn><mo>/</mo><mn>3</mn>", "<mi class=\"greek\">\u03bd</mi>");
  }

  @Test
  void twoNumbersDoNotRunIntoOne() {
    assertThat(MathMarkup.of("a", "0.197 * 160^0.4")).contains("<mn>0.197</mn><mo>&#215;</mo>");
  }

  /** Well-formed, with every number of the plain text, for each equation of every example. */
  @Test
  void everyEquationIsSet() throws Exception {
    DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    int count = 0;
    for (String file : Shipped.files()) {
      Assessment assessment = Shipped.assessment(file);
      for (Equation equation :
          assessment.working().stream().map(Step::equation).distinct().toList()) {
        if (equation.how() != Equation.How.COMPUTED) {
          continue;
        }
        String markup = MathMarkup.of(equation.symbol(), equation.text());
        String text =
            builder
                .parse(new InputSource(new StringReader(markup)))
                .getDocumentElement()
                .getTextContent();
        Matcher numbers = NUMBER.matcher(equation.text());
        while (numbers.find()) {
          assertThat(text).as(equation.printed()).contains(numbers.group());
        }
        count++;
      }
    }
    assertThat(count).isGreaterThan(200);
  }
}
