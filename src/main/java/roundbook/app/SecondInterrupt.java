package roundbook.app;

import static java.lang.invoke.MethodType.methodType;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandleProxies;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodHandles.Lookup;

/**
 * Lets an interrupt end the process at once, for a user who does not want to wait for the first.
 *
 * <p>Java hears interrupts by itself until it begins to shut down, and none after that. The class
 * that can be told otherwise belongs to a module that every Java has and none promises, so it is
 * looked for when it is needed.
 */
final class SecondInterrupt {
  private static final String PLACE = "sun.misc.Signal";

  private SecondInterrupt() {}

  /** Makes the next interrupt end the process at once; says whether this Java can. */
  static boolean ends() {
    try {
      Lookup all = MethodHandles.publicLookup();
      Class<?> signal = Class.forName(PLACE);
      Class<?> handler = Class.forName(PLACE + "Handler");
      Object interrupt =
          all.findConstructor(signal, methodType(void.class, String.class)).invoke("INT");
      MethodHandle handle = all.findStatic(signal, "handle", methodType(handler, signal, handler));
      handle.invoke(interrupt, ending(signal, handler));
      return true;
    } catch (Throwable deaf) {
      return false;
    }
  }

  private static Object ending(Class<?> signal, Class<?> handler)
      throws ReflectiveOperationException {
    MethodHandle end =
        MethodHandles.lookup().findStatic(SecondInterrupt.class, "end", methodType(void.class));
    return MethodHandleProxies.asInterfaceInstance(
        handler, MethodHandles.dropArguments(end, 0, signal));
  }

  private static void end() {
    Runtime.getRuntime().halt(Exit.STOPPED.code());
  }
}
