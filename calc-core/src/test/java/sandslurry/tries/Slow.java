package sandslurry.tries;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A property of which a try takes seconds, or a good part of one: a plain build makes a few. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface Slow {
  /** The tries of a plain build. */
  int value() default 3;
}
