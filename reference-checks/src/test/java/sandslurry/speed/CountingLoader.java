package sandslurry.speed;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * Loads the calculator and its numerics library once more, with each call of a power, logarithm or
 * another function of that cost counted: what an evaluation needs of them is its floor, on any
 * machine.
 */
public final class CountingLoader extends ClassLoader {
  private static final Set<String> OWNERS =
      Set.of("java/lang/Math", "java/lang/StrictMath", "org/apache/commons/math3/util/FastMath");

  /** All of these but roots, which a processor takes itself. */
  private static final Set<String> FUNCTIONS =
      Set.of(
          "pow", "exp", "expm1", "log", "log1p", "log10", "cbrt", "sin", "cos", "tan", "asin",
          "acos", "atan", "atan2", "sinh", "cosh", "tanh", "hypot");

  private static final Map<String, Integer> CALLS = new HashMap<>();

  /** A loader beside that of the tests. */
  public CountingLoader() {
    super(CountingLoader.class.getClassLoader());
  }

  /**
   * Counts a call; called by the classes of this loader.
   *
   * @param caller the class and the method that calls
   */
  public static void called(String caller) {
    CALLS.merge(caller, 1, Integer::sum);
  }

  /**
   * The calls since this was last asked for.
   *
   * @return their number by the method that calls
   */
  static Map<String, Integer> taken() {
    Map<String, Integer> taken = new TreeMap<>(CALLS);
    CALLS.clear();
    return taken;
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    boolean counted = name.startsWith("sandslurry.") || name.startsWith("org.apache.commons.math3");
    if (!counted || name.equals(CountingLoader.class.getName())) {
      return super.loadClass(name, resolve);
    }
    synchronized (getClassLoadingLock(name)) {
      Class<?> known = findLoadedClass(name);
      return known != null ? known : defined(name);
    }
  }

  private Class<?> defined(String name) throws ClassNotFoundException {
    try (InputStream file = getResourceAsStream(name.replace('.', '/') + ".class")) {
      if (file == null) {
        throw new ClassNotFoundException(name);
      }
      ClassReader reader = new ClassReader(file);
      ClassWriter writer = new ClassWriter(reader, ClassWriter.COMPUTE_MAXS);
      reader.accept(counting(reader.getClassName(), writer), 0);
      byte[] bytes = writer.toByteArray();
      return defineClass(name, bytes, 0, bytes.length);
    } catch (IOException e) {
      throw new ClassNotFoundException(name, e);
    }
  }

  private static ClassVisitor counting(String owner, ClassWriter writer) {
    return new ClassVisitor(Opcodes.ASM9, writer) {
      @Override
      public MethodVisitor visitMethod(
          int access, String name, String descriptor, String signature, String[] exceptions) {
        return new MethodVisitor(
            Opcodes.ASM9, super.visitMethod(access, name, descriptor, signature, exceptions)) {
          @Override
          public void visitMethodInsn(
              int opcode, String of, String function, String type, boolean isInterface) {
            // Calls of FastMath among its own are part of one call.
            if (OWNERS.contains(of) && FUNCTIONS.contains(function) && !OWNERS.contains(owner)) {
              super.visitLdcInsn(owner + "." + name);
              super.visitMethodInsn(
                  Opcodes.INVOKESTATIC,
                  "sandslurry/speed/CountingLoader",
                  "called",
                  "(Ljava/lang/String;)V",
                  false);
            }
            super.visitMethodInsn(opcode, of, function, type, isInterface);
          }
        };
      }
    };
  }
}
