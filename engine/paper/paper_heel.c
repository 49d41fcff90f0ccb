#include "paper_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* The heel: the joint as drawn, a wedge that sets the cut to the neck angle, and a card with the rim's curve
 * to try the hollow with. */

#define WEDGE_LENGTH 150.0
#define WEDGE_LEAST 4.0 /* height of its thin end, so that it can be cut */

/* at: lower left corner. */
static void
draw_wedge (RwDraft *draft, RwPoint at)
{
  double angle = rw_draft_value (draft, RW_NECK_ANGLE), rise = WEDGE_LENGTH * tan (fabs (angle) * G_PI / 180);
  const RwPoint corners[] = { at,
                              { at.x + WEDGE_LENGTH, at.y },
                              { at.x + WEDGE_LENGTH, at.y + WEDGE_LEAST },
                              { at.x, at.y + WEDGE_LEAST + rise } };
  g_autofree char *degrees = rw_paper_degrees (draft, angle), *high = rw_paper_length (draft, rise, 2);
  g_autofree char *words
      = g_strdup_printf (_("wedge at the neck angle, %s: rises %s over its length"), degrees, high);

  rw_draft_slot (draft, JOINT, RW_NECK_ANGLE);
  rw_name (rw_sheet_polygon (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, corners, G_N_ELEMENTS (corners)),
           N_ ("Wedge for the saw"), 0);
  rw_paper_words (draft, (RwPoint){ at.x + WEDGE_LENGTH / 2, at.y - 5 }, words);
}

#define CURVE_PAST 10.0
#define CURVE_BACK 16.0

/* at: the middle of the curve. */
static void
draw_curve (RwDraft *draft, RwPoint at)
{
  double radius = draft->design->rim_outer_diameter / 2;
  double half = fmin (rw_draft_value (draft, RW_JOINT_HEEL_WIDTH) / 2 + CURVE_PAST, radius);
  double turn = asin (half / radius), foot = at.y - (radius - radius * cos (turn)) - CURVE_BACK;

  rw_draft_param (draft, RIM, rim_outer_diameter);
  rw_path_begin (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE);
  rw_path_move (draft->sheet, at.x - half, foot);
  rw_path_arc (draft->sheet, (RwPoint){ at.x, at.y - radius }, radius, G_PI_2 + turn, G_PI_2 - turn);
  rw_path_line (draft->sheet, at.x + half, foot);
  rw_path_close (draft->sheet);
  rw_name (rw_path_end (draft->sheet), N_ ("Curve of the rim"), 0);
  rw_sheet_line (draft->sheet, RW_PEN_CENTRE, at.x, at.y + 3, at.x, foot - 3);
  rw_paper_words (draft, (RwPoint){ at.x, foot - 6 }, _("curve of the rim's outside, for the hollow"));
}

static void
write_notes (RwDraft *draft, RwPoint at)
{
  g_autofree char *hollow = rw_paper_length (draft, rw_draft_value (draft, RW_JOINT_HOLLOW), 1);
  g_autofree char *deep = rw_paper_length (draft, rw_draft_value (draft, RW_JOINT_RELIEF_DEPTH), 1);
  g_autofree char *down = rw_paper_length (draft, rw_draft_value (draft, RW_JOINT_RELIEF_HEIGHT), 1);
  g_autofree char *heel = rw_paper_degrees (draft, rw_draft_value (draft, RW_JOINT_HEEL_ANGLE));

  rw_paper_print (draft, &at,
                  _("Cut the face while the blank is square: %s to the fretboard. Lay the wedge under the "
                      "blank, try the cut in scrap, and check with a bevel."),
                  heel);
  rw_paper_print (draft, &at,
                  _("Hollow %s deep in the middle. Relief for the hoop %s deep, down to %s under the "
                      "fretboard's surface."),
                  hollow, deep, down);
  rw_paper_line (draft, &at,
                 _("A straightedge along the frets then shows the board's height over the head plane at "
                     "the rim; ease the face until it is right. Mark the rim's holes from the neck."));
  rw_paper_line (draft, &at,
                 _("Measured: rim outside ____________   neck angle ____________   board over the head at "
                     "the rim ____________"));
  rw_paper_line (draft, &at,
                 _("A neck blank is heavy and tips: clamp it to a jig for every cut, and follow the saw "
                     "maker's manual."));
}

#define ROOM 24.0

RwSheet *
rw_paper_heel (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Heel card"));
  double half = rw_draft_value (&draft, RW_JOINT_HEEL_WIDTH) / 2;
  RwPoint under;

  rw_draw_heel (&draft);
  under = rw_paper_under (&draft);
  draw_wedge (&draft, (RwPoint){ under.x, under.y - ROOM });
  draw_curve (&draft, (RwPoint){ under.x + WEDGE_LENGTH + ROOM + half, under.y - ROOM + CURVE_BACK });
  under = rw_paper_under (&draft);
  write_notes (&draft, (RwPoint){ under.x, under.y + ROOM - 4 });
  return rw_paper_end (&draft);
}
