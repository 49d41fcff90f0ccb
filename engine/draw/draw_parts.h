/* What the builders of drawings share: where things stand, and how figures are put to them.
 *
 * Private to drawing.c, draw_*.c and the papers.  A builder adds its items in painting order and does not ask
 * whether a number is there: rw_draw() takes away every item with a coordinate that is not finite, or out of
 * all bounds.
 *
 * Shapes that no parameter sets (the outline of the headstock, the tailpiece, tuners, the knob of a peg) are
 * plausible ones; their sizes are constants beside the code that draws them.
 */
#pragma once

#include "model/slots.h"
#include "drawing.h"

typedef struct
{
  RwSheet          *sheet;
  const RwResult   *result;
  const RwDesign   *design;   /* result->used */
  const RwMeasured *measured; /* NULL: nothing measured */
  const RwResult   *like;     /* parts of the whole view stand where they stand in its drawing; NULL: in result's */
  double            note_width; /* of papers: how long a line of their notes may be, mm */
} RwDraft;

/* Builders of views, and of the parts that views are put together from. */
void rw_draw_plan      (RwDraft *draft); /* pot frame: x, y */
void rw_draw_side      (RwDraft *draft); /* pot frame: x, z */
void rw_draw_courses   (RwDraft *draft); /* or staves, or plies */
void rw_draw_pot       (RwDraft *draft);
void rw_draw_heel      (RwDraft *draft);
void rw_draw_headstock (RwDraft *draft); /* turns its face round for a left-handed build */
void rw_draw_head_face (RwDraft *draft); /* alone, as in a right-handed build */
void rw_draw_sections  (RwDraft *draft);
void rw_draw_fretboard (RwDraft *draft);
void rw_draw_hook      (RwDraft *draft);

void rw_draw_hook_bent    (RwDraft *draft); /* the hook alone */
void rw_draw_hoop_section (RwDraft *draft); /* below it */
void rw_draw_diameter     (RwDraft *draft); /* the rim's, on a plan that stands alone */
/* Or stave; at: the left end of its long edge; below: so far under it, its edge. */
void rw_draw_segment      (RwDraft *draft, RwPoint at, double below);
void rw_draw_ring         (RwDraft *draft); /* of segments or staves, from the head side, about the origin */
void rw_draw_strip        (RwDraft *draft, RwPoint at); /* segments nested as they are sawn; at: upper left */
void rw_draw_plies        (RwDraft *draft);
void rw_draw_pot_plan     (RwDraft *draft);
void rw_draw_neck_plan    (RwDraft *draft);
void rw_draw_strings_plan (RwDraft *draft);

/* The side view by layers, from the far ones to the near. */
void rw_draw_rim_side     (RwDraft *draft);
void rw_draw_bridge_side  (RwDraft *draft);
void rw_draw_hoop_side    (RwDraft *draft);
void rw_draw_tail_side    (RwDraft *draft);
void rw_draw_across_side  (RwDraft *draft); /* rods or stick */
void rw_draw_strings_side (RwDraft *draft); /* they run behind the near row of posts */
void rw_draw_neck_side    (RwDraft *draft);
void rw_draw_hooks_side   (RwDraft *draft); /* they stand out farther than the heel's cheek */

/* Where the parts of a detail stand on its sheet. */
RwPoint rw_section_origin (const RwResult *result, int section); /* centre line and glue line, of 0 .. 4 */
double  rw_heel_plan_rise   (const RwResult *result);           /* of the plan over the side */
double  rw_heel_face_middle (const RwResult *result);           /* x of the face seen from the pot */

/* Where a plane of the instrument comes to lie on the sheet. */
typedef RwPoint (*RwMap) (const RwResult *result, double x, double y);

/* Board with markers and binding, laid on the sheet by map from the frame of the axis. */
void rw_draw_board (RwDraft *draft, RwMap map);
/* A fret's number beside the bass edge; the higher its rank, the sooner it gives way to other lettering. */
void rw_draw_fret_number (RwDraft *draft, int fret, RwMap map, int rank);
/* The heel from above, in the plan: from a line across the neck to a circle round the pot's axis, with the
 * wall of the relief for the hoop. */
void rw_draw_heel_above (RwDraft *draft, double place, double radius);
/* Outline of the headstock and its posts, laid on the sheet by map from the unfolded face. */
void rw_draw_head_outline (RwDraft *draft, RwMap map);
void rw_draw_posts        (RwDraft *draft, RwMap map);
/* Where ears are glued to the blank, on the outline that was drawn last; y of the sheet is across the headstock. */
void rw_draw_ears         (RwDraft *draft);
/* Behind the nut the neck's back runs into the headstock's over a hollow, from so far before the nut line to
 * so far along the headstock. */
#define RW_HOLLOW_NECK 16.0
#define RW_HOLLOW_HEAD 26.0

/* What holds neck and pot together: axes below the head plane and half its thickness. */
typedef struct
{
  int    count;
  double below[2];
  double half;
} RwAcross;

RwAcross rw_across       (const RwDesign *design);
/* How far the k-th, counted from 0, goes into the heel. */
double   rw_across_reach (const RwResult *result, int k);

/* The heel's sweep in the side frame: from over the corner of its cap up to where the heel starts. */
typedef struct
{
  RwPoint corner, p[4]; /* Bezier */
} RwHeelSweep;

RwHeelSweep rw_heel_sweep (const RwResult *result);
/* Joints between segments or staves on the near half, in the side frame, drawn between two heights. */
void        rw_draw_joints (RwDraft *draft, double turn, double top, double foot);
/* Adds face and sweep of the heel, from the glue line round to where the heel starts, to a path. */
void        rw_path_heel  (RwDraft *draft);
/* The shim between heel and rim: how thick it is at a depth under the board's surface; and itself, from the side. */
double      rw_heel_shim  (const RwResult *result, double depth);
void        rw_draw_shim  (RwDraft *draft);

/* Places.  The plan is the true projection: the board is tilted by the neck angle. */
RwPoint rw_place_neck      (const RwResult *result, double x, double over); /* over the board's surface */
RwPoint rw_place_head_side (const RwResult *result, double u, double over); /* over the headstock's wood */
RwPoint rw_map_plan        (const RwResult *result, double x, double y); /* frame of the axis -> plan */
RwPoint rw_map_board       (const RwResult *result, double x, double y); /* frame of the axis -> neck frame */
RwPoint rw_map_head_plan   (const RwResult *result, double u, double v); /* unfolded headstock -> plan */
RwPoint rw_map_head_flat   (const RwResult *result, double u, double v); /* unfolded, nut to the right */
RwPoint rw_place_board     (const RwResult *result, double s, double v); /* neck frame -> frame of the axis */
/* From the axis outwards at a hook's angle, and along the rim from there, rising with the angle. */
RwPoint rw_place_round     (double angle, double radius, double along);
/* The ends of a line across the board at a place, in the frame of the axis, inset from the edges. */
void    rw_place_across    (const RwResult *result, double place, double inset, RwPoint *bass,
                            RwPoint *treble);
/* The same for a piece of a fret, by (along) past its place; inset where it comes to an edge. */
void    rw_place_piece     (const RwResult *result, const RwSlotPiece *piece, double by, double inset,
                            RwPoint *bass, RwPoint *treble);
/* How far the head is pressed down on the axis at x, mm. */
double  rw_head_dip        (const RwResult *result, double x);
/* Farthest reach of hooks and hoop from the rim's axis. */
double  rw_pot_reach       (const RwResult *result);
/* -1: the bass side is turned to who looks at the side view; 1: the treble side, in a left-handed build. */
int     rw_near_side       (const RwDesign *design);
/* Down from the plan's rim centre to the side's in the whole view. */
double  rw_side_drop       (const RwResult *result);

/* A hook as it hangs, tightened: radii from the rim's axis, heights over the head plane. */
typedef struct
{
  double top_radius, foot_radius; /* of the leg's axis at the claw and at the bolt */
  double claw;                    /* axis of the claw */
  double end;                     /* of the leg */
  double shoe_top, shoe_bottom, nut_bottom;
  double shoe_radius; /* the shoe's outside */
} RwHookPlace;

RwHookPlace rw_hook_place (const RwResult *result);

/* The hoop's faces: heights over the head plane, tightened. */
double rw_hoop_top    (const RwResult *result);
double rw_hoop_bottom (const RwResult *result);

/* The tailpiece on the axis: x of its front edge, of its back over the hoop; half its widths. */
typedef struct
{
  double front, back;
  double string_half, front_half, back_half;
} RwTailPlace;

RwTailPlace rw_tail_place (const RwResult *result);

/* Figures: how a number came about, and dimensions that take value, figure and subject from one id. */
typedef struct
{
  RwMeasure   measure;
  RwPoint     from, to;
  double      offset; /* paper mm, as in RwItem */
  int         rank;
  const char *words; /* with %s for the figure, untranslated; NULL: the figure alone */
} RwSpan;

typedef struct
{
  RwPoint     arrow, text;
  int         rank;
  const char *words; /* as in RwSpan */
} RwNote;

typedef struct
{
  RwPoint apex;
  double  radius, a0, a1; /* radians */
  int     rank;
  const char *words; /* as in RwSpan */
} RwSweep;

#define RW_DIAMETER "⌀ %s"

double  rw_draft_value  (const RwDraft *draft, RwSlot slot);
void    rw_span_param   (RwDraft *draft, RwParamId id, RwSpan span);
void    rw_span_slot    (RwDraft *draft, RwSlot slot, RwSpan span);
void    rw_span_course  (RwDraft *draft, int course, RwSpan span); /* thickness, counted from 1 */
void    rw_note_param   (RwDraft *draft, RwParamId id, RwNote note);
void    rw_note_slot    (RwDraft *draft, RwSlot slot, RwNote note);
void    rw_sweep_param  (RwDraft *draft, RwParamId id, RwSweep sweep);
void    rw_sweep_slot   (RwDraft *draft, RwSlot slot, RwSweep sweep);
/* A figure alone, without lines: its base line starts, or has its middle or end, at a point. */
RwItem *rw_figure_slot  (RwDraft *draft, RwSlot slot, RwPoint at, RwAlign align);
/* A thin line that brings a point out to where a dimension can take hold of it. */
void    rw_lead_out     (RwDraft *draft, RwPoint from, RwPoint to);
/* Words under or over a part of a view, their middle so many mm of paper over a point. */
void    rw_caption      (RwDraft *draft, RwPoint at, double over, const char *words);

/* Takes away every item with a coordinate that is not finite. */
void    rw_draft_drop_unsolved (RwDraft *draft);
void    rw_draft_set    (RwDraft *draft, RwLayer layer, RwSubject subject);
#define rw_draft_param(draft, layer, p) rw_draft_set (draft, RW_LAYER_##layer, RW_SUBJECT_PARAM (p))
#define rw_draft_slot(draft, layer, s) rw_draft_set (draft, RW_LAYER_##layer, RW_SUBJECT_SLOT (s))
/* Names the item and, if number is not 0, adds it after a space: "Fret 12". */
void    rw_name         (RwItem *item, const char *words, int number);

/* The wood of course k, counted from 1: the tint it is drawn in, told from that of its neighbours. */
RwTint rw_course_tint (const RwDesign *design, int course);

/* Shapes. */
RwItem *rw_ring  (RwDraft *draft, RwPen pen, RwTint tint, RwPoint centre, double outer, double inner);
void    rw_cross (RwDraft *draft, RwPoint centre, double reach); /* centre lines of a circle */
/* Hatching at 45 degrees (ISO 128-50) inside a polygon, every step mm; lean -1 leans the other way. */
void    rw_hatch (RwDraft *draft, const RwPoint *points, int count, double step, int lean);
