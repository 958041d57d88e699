package roundbook.picture.canvas;

/**
 * A drawing that could not be made, whatever the reason was.
 *
 * <p>It is the only exception that leaves this package: the workbook can be written without the
 * picture and say so.
 */
public final class DrawingFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Makes the fault.
   *
   * @param message which drawing failed and how
   * @param cause what went wrong inside, or null
   */
  public DrawingFault(String message, Throwable cause) {
    super(message, cause);
  }
}
