package benchlore.generator.drawing;

import java.util.List;
import java.util.function.Consumer;

/**
 * A sketch of how a thing is done; it holds no figures.
 *
 * @param name as records ask for it
 * @param height in page units
 * @param painter draws it
 * @param words for someone who cannot see it
 */
record ShopSketch(String name, double height, Consumer<Svg> painter, String words) {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "feed-round-a-part",
              250,
              RouterSketches::feed,
              "A frame from above. A hand router goes anticlockwise round its outside and "
                  + "clockwise round the opening inside; the bit turns clockwise."),
          new ShopSketch(
              "tabs-and-skin",
              244,
              RouterSketches::tabs,
              "Above, a section: one groove stops short and leaves a thin skin, the other "
                  + "goes through to the waste board with a tab standing in it. Below, the part "
                  + "from above, held by four tabs."),
          new ShopSketch(
              "router-sled",
              196,
              RouterSketches::sled,
              "Seen from the end: a board wedged still between two rails; a router on a "
                  + "sled slides over them and cuts down to one level plane."),
          new ShopSketch(
              "scraper-edge",
              186,
              BenchSketches::scraper,
              "Three sections of a scraper's edge: filed square; a burnisher tilted a "
                  + "little turns each corner into a hook; leaning forward, the hook lifts a "
                  + "shaving."),
          new ShopSketch(
              "spray-path",
              268,
              SpraySketches::path,
              "From above. A gun moved in a straight line square to the board covers "
                  + "evenly; swung in an arc it is wet in the middle and dry at the ends."),
          new ShopSketch(
              "fan-patterns",
              168,
              SpraySketches::patterns,
              "Five test patterns: an even oval; heavy in the middle; split into two; bent "
                  + "like a banana; heavy on one side."),
          new ShopSketch(
              "spring-joint",
              172,
              BenchSketches::spring,
              "Two boards edge to edge, each hollow by a hair in the middle, drawn much too "
                  + "much; one clamp in the middle closes the whole joint."),
          new ShopSketch(
              "fillet",
              188,
              BenchSketches::fillet,
              "A section of two boards at right angles with a hollow fillet in the corner, "
                  + "drawn by a round tool."),
          new ShopSketch(
              "air-through-a-garage",
              230,
              SafetySketches::air,
              "A garage from above. Clean air comes in at an open door, passes the painter, "
                  + "then the work, and a fan built for vapour pulls it out on the far side; the "
                  + "door to the house is shut."),
          new ShopSketch(
              "oily-rags",
              214,
              SafetySketches::rags,
              "Oily cloths hang flat and singly on a line outdoors, or lie under water in a "
                  + "lidded metal can; a heap of them, giving off heat, is crossed out."),
          new ShopSketch(
              "nibs-levelled",
              190,
              FilmSketches::betweenCoats,
              "A section of a film on wood. A block with paper levels the nibs and stops "
                  + "short of the edge, where the film is thinnest."),
          new ShopSketch(
              "wet-sanding",
              190,
              FilmSketches::wetSanding,
              "Two sections of a film on wood. Above, a wet block has cut the tops and "
                  + "hollows still shine; below, the film is level, thinner, and still covers the "
                  + "wood."),
          new ShopSketch(
              "pores-filled",
              164,
              FilmSketches::grainFilling,
              "Three sections of open-grained wood: pores open; a blade packs filler into "
                  + "them; wiped level, filler in the pores only."),
          new ShopSketch(
              "tape-pulled",
              202,
              FilmSketches::masking,
              "Above, tape beside a soft film is folded back low over itself and pulled "
                  + "slowly. Below, a section across the line: the pressed edge of the tape keeps "
                  + "the film out."),
          new ShopSketch(
              "second-pot",
              174,
              FilmSketches::mixing,
              "Two pots. In the first a stick scrapes what clings to the sides and the "
                  + "bottom; the mix is tipped into a clean pot and stirred again."),
          new ShopSketch(
              "two-holes",
              176,
              ScrewSketches::pilot,
              "A section of two boards. On the left the holes: countersink and clearance in "
                  + "the near board, a narrower pilot in the far one. On the right the screw in "
                  + "them."),
          new ShopSketch(
              "solid-top",
              234,
              ScrewSketches::solidTop,
              "A table top from below. Screws on the middle line hold it; all others stand "
                  + "in slots that run across the grain, and arrows show both edges moving."),
          new ShopSketch(
              "hinge-leaf",
              176,
              ScrewSketches::hinge,
              "A section of a hinge leaf let in flush with the wood, its knuckle standing "
                  + "out past the edge; the screw's hole lies a hair to the back."),
          new ShopSketch(
              "rough-then-finish",
              268,
              CncSketches::passes,
              "Two sections of a hollow. Above, a flat-ended bit roughs it in steps and "
                  + "leaves a skin over the dashed shape; below, a ball end in small steps leaves "
                  + "low ridges."),
          new ShopSketch(
              "spindle-lean",
              246,
              CncSketches::tram,
              "Above, a leaning cutter leaves a surface like saw teeth. Below, a cutter "
                  + "square to the board leaves it flat."),
          new ShopSketch(
              "surfacing-path",
              216,
              CncSketches::spoilboard,
              "A spoilboard from above. A wide cutter goes to and fro in straight passes, "
                  + "each overlapping the one before."),
          new ShopSketch(
              "v-depth",
              202,
              CncSketches::carving,
              "A section of three grooves cut by one V-shaped bit: the wider the groove, "
                  + "the deeper the bit goes."),
          new ShopSketch(
              "raking-light",
              170,
              SurfaceSketches::raking,
              "A board from the side, lit by a lamp held low. Two humps and a scratch throw "
                  + "shadows away from the lamp; the eye looks from as low."),
          new ShopSketch(
              "dent-steamed",
              164,
              SurfaceSketches::dent,
              "Three sections: fibres pressed down in a dent; a wet cloth over it touched "
                  + "by the tip of an iron; the fibres swollen to just proud of the face."),
          new ShopSketch(
              "thirsty-ends",
              176,
              SurfaceSketches::endGrain,
              "A section along a board. Its tubes are open at the bare end and soak up "
                  + "finish far into the wood; at the sealed end they are plugged."),
          new ShopSketch(
              "pattern-routing",
              192,
              FitSketches::template,
              "A section: a template taped on the work. The bearing of the bit runs on the "
                  + "template, and the cutter below, as wide, takes the work flush with it."),
          new ShopSketch(
              "taped-mitres",
              204,
              FitSketches::tape,
              "Above, four mitred sides lie in a row with their outsides on stretched tape. "
                  + "Below, rolled up into a box with its mitres shut and its diagonals compared."),
          new ShopSketch(
              "shaped-cauls",
              216,
              FitSketches::caul,
              "A curved glue-up between two offcuts with a soft lining. Their outer faces "
                  + "are flat and parallel, so that clamps press straight through the joint."),
          new ShopSketch(
              "run-pared",
              132,
              MendSketches::run,
              "Three sections of a film on wood: a run left till it is hard; tape on each "
                  + "side of it and a slightly bent blade paring it down; the film sanded flat "
                  + "under a hard block."),
          new ShopSketch(
              "crack-filled",
              176,
              MendSketches::crack,
              "A section of a board cracked right through. Tape pressed on the back dams "
                  + "it; epoxy wets the walls, fills the crack and stands a little proud."),
          new ShopSketch(
              "polishing-paths",
              168,
              FilmSketches::polishing,
              "A panel from above with the paths of a pad: straight strokes that glide on "
                  + "and off the edge, then circles, then figures of eight."),
          new ShopSketch(
              "plane-pressure",
              158,
              BenchSketches::planing,
              "A plane going right along an edge, three times: starting, pressed down at "
                  + "the toe; in the middle, at both ends; leaving, at the heel."),
          new ShopSketch(
              "where-z-is-zero",
              178,
              CncSketches::zero,
              "Two set-ups from the side. For carving the bit touches the top of the wood; "
                  + "for cutting through a straight bit touches the spoilboard beside it."),
          new ShopSketch(
              "tape-and-glue",
              162,
              FitSketches::tapeAndGlue,
              "A section, pulled apart: the part with tape on its underside, drops of glue, "
                  + "tape, and the board below. The glue lies between the tapes only."),
          new ShopSketch(
              "bent-strips",
              198,
              FitSketches::bend,
              "Four thin strips pressed over a curved form. A dashed line shows the flatter "
                  + "curve that they spring back to."),
          new ShopSketch(
              "brushed-and-tipped",
              262,
              BrushSketches::brushing,
              "A brush dipped by a third; a panel from above with stripes of finish laid "
                  + "across the grain, then spread along it. Below, from the side, a nearly empty "
                  + "upright brush lands, glides over the film and lifts off."),
          new ShopSketch(
              "wet-edge",
              218,
              BrushSketches::wetEdge,
              "A panel from above, brushed in strips along its length, each just into the "
                  + "wet edge of the last. Below, two sections: over a wet edge the film flows "
                  + "level; over a set one it stands in a ridge, crossed out."),
          new ShopSketch(
              "wiped-thin",
              220,
              BrushSketches::wiping,
              "A panel from above: a folded cloth goes along the grain, off both ends, each "
                  + "stroke half over the last. Below, two sections: a thin film, and a thick one "
                  + "that sags, crossed out."),
          new ShopSketch(
              "oil-wiped-off",
              188,
              BrushSketches::oiling,
              "Three sections of wood: oil floods the face; it soaks in; a dry cloth wipes "
                  + "off all that is left on top."),
          new ShopSketch(
              "beads-lifted",
              160,
              GlueSketches::beads,
              "Three sections of a glued joint: a wet bead wiped with a wet cloth; half-set "
                  + "glue smeared into the pores, crossed out; a leathery bead lifted by a flat "
                  + "chisel."),
          new ShopSketch(
              "edge-glue-up",
              302,
              GlueSketches::edgeJoint,
              "Above, the end of four boards with beads of glue at each joint, one clamp "
                  + "over them and the next under them. Below, the panel from above: clamps over "
                  + "and under in turn, a caul across the end, a V drawn across the boards."),
          new ShopSketch(
              "oil-kept-out",
              162,
              GlueSketches::oily,
              "Four sections of oily wood: a fresh shaving taken; the face wiped; glue on "
                  + "both faces and closed; and, crossed out, a face left so long that oil has "
                  + "come back."),
          new ShopSketch(
              "scratches-replaced",
              216,
              AbrasiveSketches::grits,
              "Three sections: coarse scratches; finer ones between the bottoms of coarse "
                  + "ones; fine ones alone. Under each the face with a pencil scribble: whole, "
                  + "partly left, gone."),
          new ShopSketch(
              "blocks-for-a-profile",
              198,
              AbrasiveSketches::profile,
              "The end of a moulding with a dowel wrapped in paper in its hollow and a "
                  + "hollowed block on its bead. Beside it fingers behind paper round off a sharp "
                  + "edge, crossed out."),
          new ShopSketch(
              "rubbed-to-satin",
              172,
              AbrasiveSketches::rubbing,
              "A finished panel from above. A block goes straight from end to end, each "
                  + "stroke half over the last; a strip along each edge is left for the end."),
          new ShopSketch(
              "quarter-turns",
              164,
              AbrasiveSketches::quarterTurns,
              "Four squares of film: lines one way; finer lines across them with two old "
                  + "ones left; the finest lines the first way; polished to a mirror."),
          new ShopSketch(
              "chip-let-in",
              168,
              JoinerySketches::chip,
              "Three sections: wood torn out; the hole pared to slanting ends with a "
                  + "fitting piece above it; the piece glued in and pared flush."),
          new ShopSketch(
              "breadboard-free",
              260,
              JoinerySketches::breadboard,
              "A breadboard end from above with its three tenons showing: the middle one "
                  + "glued, the outer ones free, their pins in slots across the width. Arrows "
                  + "show the top moving both ways."),
          new ShopSketch(
              "panel-loose",
              264,
              JoinerySketches::panel,
              "Above, a framed door: glue at the corners of the frame only, the panel "
                  + "pinned at the middle of its top and bottom. Below, a section across it: room "
                  + "beside the panel in both grooves."),
          new ShopSketch(
              "grain-raised",
              164,
              ReadinessSketches::raisedGrain,
              "Three sections of wood: fibres lying flat after sanding; standing up after "
                  + "water; cut off by a block with paper."),
          new ShopSketch(
              "sticks-in-line",
              190,
              ReadinessSketches::stickers,
              "Boards stacked on a flat base with sticks above one another, air between and "
                  + "a weight on top. Beside it a board on sticks out of line, bent, crossed out."),
          new ShopSketch(
              "stream-breaks",
              196,
              ReadinessSketches::cup,
              "A cup with a hole: filled to the brim in a pot; lifted clear with its stream "
                  + "whole and a watch started; its stream broken and the watch stopped."),
          new ShopSketch(
              "comb-in-the-film",
              190,
              ReadinessSketches::comb,
              "A section of a comb pressed through a wet film on to the wood. Some of its "
                  + "teeth, each a little shorter than the last, reach the film; the others stay "
                  + "dry."));

  String draw(String title, String idPrefix) {
    Svg svg = Svg.titled(Dimensions.PAGE_WIDTH, height, new Label(idPrefix, title, words));
    painter.accept(svg);
    return svg.end();
  }
}
