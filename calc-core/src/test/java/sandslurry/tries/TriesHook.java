package sandslurry.tries;

import java.util.Optional;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * The tries that a property names are those of the deep profile, which draws new ones each time. A
 * plain build takes a share of them, so that it ends while one waits, and draws the same ones each
 * time, so that it fails for a change and not by chance.
 */
public final class TriesHook implements AroundPropertyHook {
  private static final double SHARE = Double.parseDouble(System.getProperty("tries.share", "0.08"));
  private static final boolean DEEP = SHARE >= 1;
  private static final int FEWEST = 5;
  private static final int MOST = 400;

  @Override
  public PropertyExecutionResult aroundProperty(
      PropertyLifecycleContext context, PropertyExecutor property) {
    PropertyAttributes attributes = context.attributes();
    if (!DEEP) {
      Optional<Slow> slow = context.findAnnotation(Slow.class);
      attributes
          .tries()
          .ifPresent(
              deep ->
                  attributes.setTries(
                      slow.map(few -> Math.min(deep, few.value())).orElseGet(() -> plain(deep))));
      if (attributes.seed().isEmpty()) {
        attributes.setSeed(String.valueOf(context.targetMethod().toString().hashCode()));
      }
    }
    return property.execute();
  }

  private static int plain(int deep) {
    return Math.max(Math.min(deep, FEWEST), Math.min(MOST, (int) Math.round(SHARE * deep)));
  }

  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }
}
