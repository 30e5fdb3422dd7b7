package benchlore.generator.drawing.bit;

/**
 * A bit's half profile, and how the work stands against it. Heights count up from the cutter's tip.
 *
 * @param profile from the tip's centre out and up to the top of the cutting edges
 * @param stemMm neck above the cutting edges, as thick as the profile's end
 * @param edgeMm distance of the work's edge from the axis; 0 for a cut in a face
 * @param floorMm height of the work's lower face; negative below the tip
 * @param faceMm height of the work's upper face
 */
record Form(Outline profile, double stemMm, double edgeMm, double floorMm, double faceMm) {

  static Form of(BitGeometry g) {
    return switch (g.shape()) {
      case STRAIGHT, CORNER_RADIUS, BALL, TAPERED_BALL, V, FLAT_TIP_V -> GrooveForms.of(g);
      case DOVETAIL, T_SLOT, KEYHOLE, SURFACING, POINT_ROUND_OVER -> GrooveForms.of(g);
      case TRIM, CHAMFER, ROUND_OVER, BEAD, COVE, OGEE, REVERSE_OGEE -> EdgeForms.of(g);
      case THUMBNAIL, RABBET, SLOT, BULL_NOSE, FINGER_PULL -> EdgeForms.of(g);
      case PANEL_BEVEL, PANEL_COVE, LOCK_MITRE, FINGER_JOINT, TONGUE_AND_GROOVE ->
          JoineryForms.of(g);
    };
  }

  /** A cut in a face, this deep. */
  static Form inFace(Outline profile, double stemMm, double depthMm) {
    double below = Math.max(depthMm * 0.45, profile.maxX() * 0.3);
    return new Form(profile, stemMm, 0, -below, depthMm);
  }

  /** A cut along an edge that leaves wood below the tip, for the bearing to run on. */
  static Form onEdge(Outline profile, double edgeMm, double faceMm) {
    double below = Math.max(faceMm * 0.7, (profile.maxX() - edgeMm) * 0.45);
    return new Form(profile, 0, edgeMm, -below, faceMm);
  }

  /** A cut over the whole thickness of an edge. */
  static Form throughEdge(Outline profile, double edgeMm, double floorMm, double faceMm) {
    return new Form(profile, 0, edgeMm, floorMm, faceMm);
  }

  /** The wood's new surface from the lower face (or the groove's middle) up to the upper face. */
  Outline contour() {
    Outline cut = removedSide();
    if (edgeMm <= 0) {
      return cut;
    }
    return floorMm < 0
        ? Pen.at(edgeMm, floorMm).lineTo(edgeMm, 0).outline().then(cut)
        : cut.withoutFloor();
  }

  /** What is cut away: for a groove both halves. */
  Outline removed() {
    Outline side = removedSide();
    if (edgeMm > 0) {
      return side.thenLineTo(edgeMm, side.to().z()).thenLineTo(edgeMm, side.from().z()).closed();
    }
    return side.then(side.mirrored().reversed()).closed();
  }

  private Outline removedSide() {
    Outline side = profile.between(Math.max(0, floorMm), faceMm);
    if (edgeMm > 0) {
      side = side.pushedTo(edgeMm);
    }
    double endsAt = side.to().z();
    return endsAt < faceMm - 1e-6 ? side.thenLineTo(side.to().x(), faceMm) : side;
  }
}
