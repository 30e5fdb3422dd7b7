package benchlore.schedules.coating;

/**
 * The surface to coat.
 *
 * @param faceSquareMetre one side of all pieces, square metres
 * @param edgeSquareMetre all edges of all pieces, square metres; 0 or more
 * @param bothFaces whether the back is coated as well; it should be, so that the wood takes up and
 *     gives off moisture evenly
 */
public record CoatedArea(double faceSquareMetre, double edgeSquareMetre, boolean bothFaces) {
  /**
   * Flat rectangular pieces, all four edges counted.
   *
   * @param lengthMetre of one piece
   * @param widthMetre of one piece
   * @param thicknessMetre of one piece
   * @param pieces how many
   * @param bothFaces whether the back is coated as well
   */
  public static CoatedArea of(
      double lengthMetre, double widthMetre, double thicknessMetre, int pieces, boolean bothFaces) {
    double face = lengthMetre * widthMetre * pieces;
    double around = 2 * lengthMetre + 2 * widthMetre;
    return new CoatedArea(face, around * thicknessMetre * pieces, bothFaces);
  }

  /** Everything that gets wet, square metres. */
  public double totalSquareMetre() {
    int faces = bothFaces ? 2 : 1;
    return faceSquareMetre * faces + edgeSquareMetre;
  }
}
