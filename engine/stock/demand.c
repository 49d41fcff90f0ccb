#include "demand.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#include "model/rim.h"
#include "table/material.h"

/* Over both ends of rods and sticks across the pot: nut and washer at the tail, the hanger in the heel. */
#define PAST_THE_RIM 30.0
/* The glue face of a scarf is so many times as long as the headstock is thick; common practice, no source. */
#define SCARF_SLOPE 4.0
/* A heel cap runs so far along the neck. */
#define HEEL_CAP_LENGTH 45.0
/* A bridge is sawn from a blank of this thickness and tapered. */
#define BRIDGE_THICKNESS 9.0
#define BRIDGE_PAST_FEET 6.0
/* Fret wire sticks out so far on either side until it is nipped. */
#define FRET_PAST_EDGE 3.0

#define DEGREE (G_PI / 180)

typedef struct
{
  const RwResult *result;
  const RwDesign *d;
  GArray *pieces;
} Demand;

static double
value (const Demand *demand, int slot)
{
  return demand->result->value[slot];
}

/* A piece with a size that is missing or nothing is left out. */
static void
add (Demand *demand, RwPiece piece)
{
  gboolean thick = rw_stock_kind_is_thick (piece.kind);

  if (piece.count > 0 && piece.length > 0 && piece.width > 0 && (!thick || piece.thickness > 0)
      && isfinite (piece.length + piece.width + piece.thickness))
    g_array_append_val (demand->pieces, piece);
}

static RwPiece
wooden (RwPieceUse use, int wood, RwStep step, int count)
{
  return (RwPiece){ .use = use, .count = count, .material = rw_woods[wood].id, .kind = RW_STOCK_BOARD, .step = step };
}

/* Rough sizes from finished ones, with the allowances for any piece. */
static void
add_rough (Demand *demand, RwPiece piece, double length, double width, double thickness)
{
  const RwDesign *d = demand->d;

  piece.finished_length = length;
  piece.finished_width = width;
  piece.finished_thickness = thickness;
  piece.length = length + d->stock_over_length;
  piece.width = width + d->stock_over_width;
  piece.thickness = thickness + d->stock_planing;
  add (demand, piece);
}

/* ---- the rim ---- */

static void
segments (Demand *demand)
{
  const RwDesign *d = demand->d;
  double mitre = value (demand, RW_RIM_SEGMENT_MITRE), kerf = d->shop_kerf / cos (mitre * DEGREE);
  double width = d->rim_strip_width > 0 ? d->rim_strip_width : value (demand, RW_RIM_SEGMENT_MIN_WIDTH);

  for (int k = 1; k <= d->rim_course_thickness.count; k++)
    {
      RwPiece piece = wooden (RW_PIECE_SEGMENT, rw_rim_course_wood (d, k), RW_STEP_SEGMENTS, (int) d->rim_segments);

      piece.number = k;
      piece.mitre = mitre;
      piece.length = value (demand, RW_RIM_SEGMENT_FEED) - d->shop_kerf;
      piece.run = kerf + width * tan (mitre * DEGREE);
      piece.width = width;
      piece.thickness = value (demand, RW_RIM_COURSE_ROUGH + k);
      piece.finished_length = value (demand, RW_RIM_SEGMENT_OUTER_EDGE);
      piece.finished_width = width;
      piece.finished_thickness = d->rim_course_thickness.at[k - 1];
      add (demand, piece);
    }
}

static void
staves (Demand *demand)
{
  const RwDesign *d = demand->d;
  RwPiece piece = wooden (RW_PIECE_STAVE, d->rim_course_wood.at[0], RW_STEP_SEGMENTS, (int) d->rim_segments);

  piece.length = piece.finished_length = value (demand, RW_RIM_STAVE_LENGTH);
  piece.width = piece.finished_width = value (demand, RW_RIM_SEGMENT_OUTER_EDGE);
  piece.thickness = d->rim_strip_width > 0 ? d->rim_strip_width : value (demand, RW_RIM_SEGMENT_MIN_WIDTH);
  piece.finished_thickness = piece.thickness;
  piece.on_edge = TRUE;
  add (demand, piece);
}

static void
plies (Demand *demand)
{
  const RwDesign *d = demand->d;
  int count = (int) value (demand, RW_RIM_PLY_COUNT);

  for (int k = 1; k <= count && k <= RW_PLIES_MAX; k++)
    {
      RwPiece piece = wooden (RW_PIECE_PLY, d->rim_course_wood.at[0], RW_STEP_SEGMENTS, 1);

      piece.number = k;
      piece.on_edge = TRUE;
      add_rough (demand, piece, value (demand, RW_RIM_PLY_LENGTH + k), d->rim_height + 2 * d->rim_turning_allowance,
                 d->rim_ply_thickness);
    }
}

/* ---- the neck ---- */

/* A block of the neck, in one piece or as strips on edge side by side: each as wide as the block is deep. */
static void
add_block (Demand *demand, RwPiece piece, double length, double width, double depth)
{
  const RwDesign *d = demand->d;
  int strips = (int) d->stock_neck_strips;

  piece.finished_length = piece.length = length;
  if (strips <= 1)
    {
      piece.width = piece.finished_width = width;
      piece.thickness = piece.finished_thickness = depth;
      piece.on_edge = TRUE;
    }
  else
    {
      piece.count *= strips;
      piece.width = piece.finished_width = depth;
      piece.finished_thickness = width / strips;
      piece.thickness = piece.finished_thickness + d->stock_planing;
      piece.on_edge = TRUE;
    }
  add (demand, piece);
}

/* Depths under the glue face, allowance included. */
static double
shaft_depth (const Demand *demand)
{
  const RwDesign *d = demand->d;
  double tilt = d->headstock_angle * DEGREE;
  double shaft = MAX (d->neck_thickness_first, d->neck_thickness_last) - d->fretboard_thickness;
  double heel = d->joint_heel_depth - d->fretboard_thickness;
  double head = d->headstock_length * sin (tilt) + (d->headstock_thickness - d->headstock_overlay) * cos (tilt);

  if (d->stock_neck_heel == RW_NECK_HEEL_SOLID)
    shaft = MAX (shaft, heel);
  if (d->stock_neck_head == RW_NECK_HEAD_SOLID)
    shaft = MAX (shaft, head);
  return shaft + d->neck_blank_allowance;
}

static void
headstock (Demand *demand, double width)
{
  const RwDesign *d = demand->d;
  double wood = d->headstock_thickness - d->headstock_overlay;
  RwPiece head = wooden (RW_PIECE_HEAD, d->neck_wood, RW_STEP_NECK_BLANK, 1);

  if (d->stock_neck_head == RW_NECK_HEAD_SCARFED)
    add_block (demand, head, d->headstock_length + SCARF_SLOPE * wood + d->neck_blank_allowance, width,
               wood + d->stock_planing);
  if (d->headstock_ears == RW_YES && d->headstock_width > width)
    add_rough (demand, wooden (RW_PIECE_EAR, d->neck_wood, RW_STEP_HEADSTOCK, 2), d->headstock_length,
               (d->headstock_width - width) / 2, wood);
}

/* Blocks of the shaft's depth under its heel, until it is deep enough. */
static void
stacked_heel (Demand *demand, double width, double shaft)
{
  const RwDesign *d = demand->d;
  double missing = d->joint_heel_depth - d->fretboard_thickness + d->neck_blank_allowance - shaft;
  int blocks = (int) ceil (missing / shaft - 1e-9);

  if (d->stock_neck_heel == RW_NECK_HEEL_STACKED && blocks > 0)
    add_block (demand, wooden (RW_PIECE_HEEL, d->neck_wood, RW_STEP_NECK_BLANK, blocks),
               d->neck_heel_start + d->neck_blank_allowance, width, missing / blocks + d->stock_planing);
}

static void
neck (Demand *demand)
{
  const RwDesign *d = demand->d;
  double width = value (demand, RW_NECK_BLANK_WIDTH), length = value (demand, RW_NECK_BLANK_LENGTH);
  double shaft = shaft_depth (demand);

  if (d->stock_neck_head == RW_NECK_HEAD_SCARFED)
    length -= d->headstock_length * cos (d->headstock_angle * DEGREE);
  add_block (demand, wooden (RW_PIECE_NECK, d->neck_wood, RW_STEP_NECK_BLANK, 1), length, width, shaft);
  headstock (demand, width);
  stacked_heel (demand, width, shaft);
}

static void
fretboard (Demand *demand)
{
  const RwDesign *d = demand->d;
  int strips = (int) d->stock_board_strips;
  double length = value (demand, RW_NECK_BOARD_LENGTH);
  double width = MAX (value (demand, RW_NECK_WIDTH_AT_END), d->nut_width) - 2 * d->fretboard_binding;

  add_rough (demand, wooden (RW_PIECE_FRETBOARD, d->neck_board_wood, RW_STEP_FRETBOARD, strips), length,
             width / strips, d->fretboard_thickness);
  if (d->fretboard_binding > 0)
    {
      RwPiece binding = wooden (RW_PIECE_BINDING, d->stock_facing_wood, RW_STEP_FRETBOARD, 2);

      binding.on_edge = TRUE;
      binding.length = length + d->stock_over_length;
      binding.width = d->fretboard_thickness + d->stock_planing;
      binding.thickness = binding.finished_thickness = d->fretboard_binding;
      binding.finished_length = length;
      binding.finished_width = d->fretboard_thickness;
      add (demand, binding);
    }
}

static void
facings (Demand *demand)
{
  const RwDesign *d = demand->d;

  if (d->headstock_overlay > 0)
    add_rough (demand, wooden (RW_PIECE_OVERLAY, d->stock_facing_wood, RW_STEP_HEADSTOCK, 1), d->headstock_length,
               d->headstock_width, d->headstock_overlay);
  if (d->stock_heel_cap > 0)
    add_rough (demand, wooden (RW_PIECE_HEEL_CAP, d->stock_facing_wood, RW_STEP_HEEL, 1), HEEL_CAP_LENGTH,
               d->joint_heel_cap_width, d->stock_heel_cap);
}

static void
bridge_and_stick (Demand *demand)
{
  const RwDesign *d = demand->d;
  RwPiece bridge = wooden (RW_PIECE_BRIDGE, d->stock_bridge_wood, RW_STEP_STRING_UP, (int) d->stock_bridge_blanks);

  bridge.on_edge = TRUE;
  add_rough (demand, bridge, d->bridge_foot_spread + d->bridge_foot_length + BRIDGE_PAST_FEET,
             value (demand, RW_BRIDGE_HEIGHT), BRIDGE_THICKNESS);
  if (d->joint_kind == RW_JOINT_STICK)
    add_rough (demand, wooden (RW_PIECE_STICK, d->neck_wood, RW_STEP_FIT, 1), d->rim_outer_diameter + 2 * PAST_THE_RIM,
               d->joint_stick_section, d->joint_stick_section);
}

/* ---- metal ---- */

static void
add_round (Demand *demand, RwPieceUse use, RwStep step, double length, double diameter, int count)
{
  add (demand, (RwPiece){ .use = use, .count = count, .kind = RW_STOCK_ROD, .length = length, .width = diameter,
                          .step = step, .exact = TRUE, .finished_length = length });
}

static void
hooks_and_hoop (Demand *demand)
{
  const RwDesign *d = demand->d;
  double strip = value (demand, RW_HOOP_STRIP);

  add_round (demand, RW_PIECE_HOOK, RW_STEP_HOOKS, value (demand, RW_HOOKS_CUT), d->hooks_rod, (int) d->hooks_count);
  add (demand, (RwPiece){ .use = RW_PIECE_SHOE, .count = (int) d->hooks_count, .kind = RW_STOCK_BAR,
                          .length = d->shoes_height, .width = MAX (d->stock_shoe_depth, d->shoes_width),
                          .thickness = MIN (d->stock_shoe_depth, d->shoes_width), .step = RW_STEP_SHOES,
                          .finished_length = d->shoes_height });
  add (demand, (RwPiece){ .use = RW_PIECE_HOOP, .count = 1, .material = rw_metals[d->hoop_material].id,
                          .kind = RW_STOCK_BAR, .length = strip + d->stock_hoop_tail,
                          .width = MAX (d->hoop_height, d->hoop_thickness),
                          .thickness = MIN (d->hoop_height, d->hoop_thickness), .step = RW_STEP_HOOP, .exact = TRUE,
                          .finished_length = strip });
}

static void
rods_and_wire (Demand *demand)
{
  const RwDesign *d = demand->d;

  if (d->joint_kind == RW_JOINT_RODS)
    add_round (demand, RW_PIECE_ROD, RW_STEP_FIT, d->rim_outer_diameter + 2 * PAST_THE_RIM, d->joint_rod_diameter,
               (int) d->joint_rod_count);
  if (d->rim_tone_ring_rod > 0)
    add_round (demand, RW_PIECE_TONE_RING, RW_STEP_EDGE,
               G_PI * (d->rim_outer_diameter - d->rim_tone_ring_rod) + d->stock_hoop_tail, d->rim_tone_ring_rod, 1);
  if (demand->result->plan.has_short && d->fifth_route == RW_ROUTE_TUNNEL)
    add (demand, (RwPiece){ .use = RW_PIECE_TUBE, .count = 1, .kind = RW_STOCK_TUBE, .exact = TRUE,
                            .length = demand->result->plan.short_x + d->nut_thickness + d->stock_over_length,
                            .width = d->fifth_tube_outer, .thickness = d->fifth_tube_wall, .step = RW_STEP_FIFTH });
  for (int n = 1; n <= (int) d->frets_count; n++)
    add (demand, (RwPiece){ .use = RW_PIECE_FRET, .number = n, .count = 1, .kind = RW_STOCK_WIRE, .exact = TRUE,
                            .length = value (demand, RW_FRETS_LENGTH + n) + 2 * FRET_PAST_EDGE,
                            .width = d->frets_crown_width, .step = RW_STEP_FRETS,
                            .finished_length = value (demand, RW_FRETS_LENGTH + n) });
}

GArray *
rw_demand (const RwResult *result)
{
  Demand demand = { result, &result->used, g_array_new (FALSE, TRUE, sizeof (RwPiece)) };

  switch (result->used.rim_construction)
    {
    case RW_RIM_SEGMENTS:
      segments (&demand);
      break;
    case RW_RIM_STAVES:
      staves (&demand);
      break;
    default:
      plies (&demand);
    }
  neck (&demand);
  fretboard (&demand);
  facings (&demand);
  bridge_and_stick (&demand);
  hooks_and_hoop (&demand);
  rods_and_wire (&demand);
  return demand.pieces;
}

/* ---- words ---- */

static const struct
{
  const char *label;
  const char *letters; /* first letters of what it is in English; they stand on drawings as they are */
} uses[RW_PIECE_USE_COUNT] = {
  [RW_PIECE_SEGMENT] = { N_("Segment"), "S" },
  [RW_PIECE_STAVE] = { N_("Stave"), "S" },
  [RW_PIECE_PLY] = { N_("Ply"), "P" },
  [RW_PIECE_NECK] = { N_("Neck"), "N" },
  [RW_PIECE_HEAD] = { N_("Scarfed headstock"), "NH" },
  [RW_PIECE_HEEL] = { N_("Heel block"), "NB" },
  [RW_PIECE_EAR] = { N_("Ear"), "NE" },
  [RW_PIECE_FRETBOARD] = { N_("Fretboard"), "F" },
  [RW_PIECE_OVERLAY] = { N_("Headstock overlay"), "O" },
  [RW_PIECE_HEEL_CAP] = { N_("Heel cap"), "C" },
  [RW_PIECE_BINDING] = { N_("Binding"), "B" },
  [RW_PIECE_BRIDGE] = { N_("Bridge blank"), "BR" },
  [RW_PIECE_STICK] = { N_("Stick"), "ST" },
  [RW_PIECE_HOOK] = { N_("Hook"), "H" },
  [RW_PIECE_SHOE] = { N_("Shoe"), "SH" },
  [RW_PIECE_HOOP] = { N_("Tension hoop"), "T" },
  [RW_PIECE_TONE_RING] = { N_("Tone ring"), "TR" },
  [RW_PIECE_ROD] = { N_("Rod across the pot"), "R" },
  [RW_PIECE_TUBE] = { N_("Tunnel tube"), "TU" },
  [RW_PIECE_FRET] = { N_("Fret"), "FR" },
};

const char *
rw_piece_label (RwPieceUse use)
{
  return uses[use].label;
}

char *
rw_piece_words (const RwPiece *piece)
{
  const char *label = _(uses[piece->use].label);

  if (piece->number == 0)
    return g_strdup (label);
  if (piece->use == RW_PIECE_SEGMENT)
    return g_strdup_printf (_("%s, course %d"), label, piece->number);
  return g_strdup_printf ("%s %d", label, piece->number);
}

char *
rw_piece_mark (const RwPiece *piece)
{
  const char *letters = uses[piece->use].letters;

  return piece->number > 0 ? g_strdup_printf ("%s%d", letters, piece->number) : g_strdup (letters);
}
