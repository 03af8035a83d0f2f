package sandslurry.fact;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What must hold between fields. A rule is skipped while a field that it needs is wrong.
 *
 * @param blamed the field at which it is told when it is broken
 * @param needs the fields that it looks at
 * @param holds whether it holds
 * @param sentence what is told when it does not
 */
record Rule(
    Field<?> blamed,
    List<Field<?>> needs,
    Predicate<Values> holds,
    Function<Values, String> sentence) {

  void check(Values values) {
    if (values.good(needs) && !holds.test(values)) {
      values.problem(blamed, sentence.apply(values));
    }
  }
}
