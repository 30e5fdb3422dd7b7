package benchlore.schedules.answer;

/**
 * What a line of working works out. Pages and rules look a line up by this; its words may change.
 */
public enum QuantityKey {
  /** Adhesive. */
  ADHESIVE_MASS,
  /** On each face. */
  ADHESIVE_ON_EACH_FACE,
  /** Volume. */
  ADHESIVE_VOLUME,
  /** Airborne dust. */
  AIRBORNE_DUST,
  /** Air changes needed. */
  AIR_CHANGES_NEEDED,
  /** Area to coat. */
  AREA_TO_COAT,
  /** Side hardness. */
  ASSUMED_HARDNESS,
  /** A batch's time clamping. */
  BATCH_CLAMPING,
  /** A batch's time in clamps. */
  BATCH_IN_CLAMPS,
  /** A batch's time spreading. */
  BATCH_SPREADING,
  /** Bearing on the template at first. */
  BEARING_ON_THE_TEMPLATE_AT_FIRST,
  /** Chip load, high end. */
  CHIP_LOAD,
  /** Clear after sanding. */
  CLEAR_AFTER_SANDING,
  /** Clear after spraying. */
  CLEAR_AFTER_SPRAYING,
  /** Closed time here. */
  CLOSED_TIME_HERE,
  /** Coarsest last grain accepted. */
  COARSEST_LAST_GRAIN_ACCEPTED,
  /** Coats. */
  COATS_NEEDED,
  /** Depth passes. */
  DEPTH_PASSES,
  /** Depth to level. */
  DEPTH_TO_LEVEL,
  /** Depth to remove. */
  DEPTH_TO_REMOVE,
  /** Draw back from the bottom. */
  DRAW_BACK_FROM_THE_BOTTOM,
  /** Time to a stage of drying. */
  DRYING_STAGE,
  /** Dry before joining. */
  DRY_BEFORE_JOINING,
  /** Dry film of all coats. */
  DRY_FILM_OF_ALL_COATS,
  /** Dry film of this coat. */
  DRY_FILM_OF_THIS_COAT,
  /** 8-hour share of the limit. */
  DUST_EIGHT_HOUR_SHARE,
  /** Dust made. */
  DUST_MADE,
  /** Outdoor air needed. */
  DUST_OUTDOOR_AIR_NEEDED,
  /** Effective air changes. */
  EFFECTIVE_AIR_CHANGES,
  /** Mixture index against the ceilings. */
  CEILING_INDEX,
  /** How long sanding dust is given to come down. */
  DUST_COMES_DOWN,
  /** 8-hour mixture index. */
  EIGHT_HOUR_MIXTURE_INDEX,
  /** Moisture content. */
  EQUILIBRIUM_MOISTURE,
  /** Mixture index at the face, over wet work or at the sander. */
  FACE_INDEX,
  /** Feed, high end. */
  FEED,
  /** Finest grade that opens the surface. */
  FINEST_OPENING_GRAIN,
  /** Film left. */
  FILM_LEFT,
  /** Film on the opening's face. */
  FILM_ON_OPENING,
  /** Film on the part's edge. */
  FILM_ON_PART,
  /** Flow for fire, 25 %. */
  FLOW_FOR_FIRE_QUARTER,
  /** Flow for fire, 10 %. */
  FLOW_FOR_FIRE_TENTH,
  /** Flow for health. */
  FLOW_FOR_HEALTH,
  /** Flow for health over 8 hours. */
  FLOW_FOR_HEALTH_OVER_8_HOURS,
  /** Full load after. */
  FULL_LOAD_AFTER,
  /** Gap on each moving side. */
  GAP_ON_EACH_MOVING_SIDE,
  /** Bead of adhesive. */
  GLUE_BEAD,
  /** Glue line area. */
  GLUE_LINE_AREA,
  /** Grain of a grade. */
  GRAIN_OF_GRADE,
  /** Handle after. */
  HANDLE_AFTER,
  /** Highest dust in the air. */
  HIGHEST_DUST_IN_THE_AIR,
  /** Highest mixture index. */
  HIGHEST_MIXTURE_INDEX,
  /** Highest mixture index if brushed. */
  HIGHEST_MIXTURE_INDEX_IF_BRUSHED,
  /** Highest share of the danger level. */
  HIGHEST_SHARE_OF_THE_DANGER_LEVEL,
  /** Highest share of the lower explosive limit. */
  HIGHEST_SHARE_OF_THE_LOWER_EXPLOSIVE_LIMIT,
  /** Highest vapour. */
  HIGHEST_VAPOUR,
  /** A joint's clamps. */
  JOINT_CLAMPS,
  /** A joint's clamps for force. */
  JOINT_CLAMPS_FOR_FORCE,
  /** A joint's clamps for spacing. */
  JOINT_CLAMPS_FOR_SPACING,
  /** A joint's farthest apart. */
  JOINT_FARTHEST_APART,
  /** A joint's tighten each to. */
  JOINT_TIGHTEN_EACH_TO,
  /** Largest jump in the path. */
  LARGEST_JUMP_IN_THE_PATH,
  /** Least grip. */
  LEAST_GRIP,
  /** A light pass beside the path. */
  LIGHT_PASS,
  /** Liquid. */
  LIQUID_FINISH,
  /** Longest time to settle. */
  LONGEST_TIME_TO_SETTLE,
  /** Machine after. */
  MACHINE_AFTER,
  /** Machine time. */
  MACHINE_TIME,
  /** Highest share of the limit. */
  MIST_HIGHEST_SHARE,
  /** Mist. */
  MIST_MADE,
  /** Moisture in the damp season. */
  MOISTURE_IN_THE_DAMP_SEASON,
  /** Moisture in the dry season. */
  MOISTURE_IN_THE_DRY_SEASON,
  /** Moisture of the shop. */
  MOISTURE_OF_THE_SHOP,
  /** Moisture to fit at. */
  MOISTURE_TO_FIT_AT,
  /** Molar volume x 1000. */
  MOLAR_VOLUME,
  /** Most travel at a screw. */
  MOST_TRAVEL_AT_A_SCREW,
  /** Movement of this board. */
  MOVEMENT_COEFFICIENT,
  /** Off the face. */
  OFF_THE_FACE,
  /** Open time here. */
  OPEN_TIME_HERE,
  /** A pass with one grade. */
  PASS,
  /** The face passes with a grade more. */
  PASSES_WITH_GRADE,
  /** Pot life here. */
  POT_LIFE_HERE,
  /** Pressure to aim at. */
  PRESSURE_TO_AIM_AT,
  /** Index of the worst 15 minutes. */
  QUARTER_HOUR_INDEX,
  /** When the room is fit to sit in after a coat. */
  RE_ENTRY,
  /** Ridge height. */
  RIDGE_HEIGHT,
  /** Rim speed. */
  RIM_SPEED,
  /** One way of rubbing. */
  RUBBING,
  /** Amount in spoons or cups. */
  SHOP_MEASURE,
  /** Most shrinking in the year. */
  SHRINKING,
  /** Slot. */
  SLOT_LENGTH,
  /** Solids. */
  SOLIDS_SPRAYED,
  /** Speed to set. */
  SPEED_TO_SET,
  /** Stick-out. */
  STICK_OUT,
  /** Surface above dew point. */
  SURFACE_ABOVE_DEW_POINT,
  /** Surface above dew point at the start. */
  SURFACE_ABOVE_DEW_POINT_AT_THE_START,
  /** Layers. */
  SURFACING_LAYERS,
  /** Strokes. */
  SURFACING_STROKES,
  /** Time. */
  SURFACING_TIME,
  /** Most swelling in the year. */
  SWELLING,
  /** Tabs. */
  TAB_COUNT,
  /** Tab height. */
  TAB_HEIGHT,
  /** Tab width to enter. */
  TAB_WIDTH_TO_ENTER,
  /** Layers of tape. */
  TAPE_LAYERS,
  /** Theoretical spreading rate. */
  THEORETICAL_SPREADING_RATE,
  /** Thickness factor. */
  THICKNESS_FACTOR,
  /** Thickness through the year. */
  THICKNESS_THROUGH_THE_YEAR,
  /** Total assembly time. */
  TOTAL_ASSEMBLY_TIME,
  /** Trim passes. */
  TRIM_PASSES,
  /** Wait after the under coat. */
  WAIT_AFTER_THE_UNDER_COAT,
  /** Wait. */
  WAIT_TO_DRY,
  /** Work of a way to a sheen. */
  WAY_TO_SHEEN,
  /** Weighted time. */
  WEIGHTED_TIME
}
