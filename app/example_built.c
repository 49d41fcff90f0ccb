#include "example_built.h"

#define MADE(step, date) { RW_STEP_##step, date, NULL, NULL, NULL }
#define READ(step, date, id, readings, note) { RW_STEP_##step, date, id, readings, note }

/* One winter in a shed.  Much came out otherwise than planned; each was measured before the next part was cut. */
const RwExampleEvent rw_example_built[] = {
  READ (CHOOSE, "2026-01-10", "head.nominal", "279.7; 279.8; 279.7", "bore of the band, three ways"),
  MADE (CHOOSE, "2026-01-10"),
  MADE (STOCK, "2026-01-17"),
  READ (SEGMENTS, "2026-01-18", "rim.segment.outer_edge", "92.7", "stop crept by a tenth"),
  MADE (SEGMENTS, "2026-01-18"),
  READ (COURSES, "2026-01-24", "rim.course_thickness[1]", "19.5", "a low corner took more sanding"),
  READ (COURSES, "2026-01-24", "rim.course_thickness[2]", "23.6", ""),
  READ (COURSES, "2026-01-24", "rim.course_thickness[3]", "23.8", ""),
  MADE (COURSES, "2026-01-24"),
  MADE (STACK, "2026-01-25"),
  READ (TURN, "2026-01-31", "rim.outer_diameter", "278.6; 278.3; 278.4", "chased a bump and went under"),
  READ (TURN, "2026-01-31", "rim.wall", "13.6; 13.8; 13.7", ""),
  READ (TURN, "2026-01-31", "rim.height", "63.6", ""),
  MADE (TURN, "2026-01-31"),
  MADE (EDGE, "2026-02-01"),
  READ (HOOP, "2026-02-07", "hoop.bore", "282.0; 281.7; 281.8", "opened a little in the brazing"),
  READ (HOOP, "2026-02-07", "hoop.notch_depth", "5.3", "the file found its own depth"),
  MADE (HOOP, "2026-02-07"),
  MADE (NECK_BLANK, "2026-02-14"),
  READ (HEEL, "2026-02-15", "neck.angle", "2.3", "wedge slipped; left as it is"),
  MADE (HEEL, "2026-02-15"),
  MADE (HEADSTOCK, "2026-02-21"),
  READ (FRETBOARD, "2026-02-22", "fretboard.thickness", "4.7", "tear-out planed away"),
  READ (FRETBOARD, "2026-02-22", "frets.position[12]", "325.1", "knife wandered"),
  MADE (FRETBOARD, "2026-02-22"),
  READ (FRETS, "2026-02-28", "frets.crown_height", "1.1", "another wire than ordered"),
  MADE (FRETS, "2026-02-28"),
  READ (CARVE, "2026-03-07", "neck.thickness_first", "20.4", "one pass more than meant"),
  MADE (CARVE, "2026-03-07"),
  MADE (FIFTH, "2026-03-08"),
  READ (FIT, "2026-03-14", "neck.set_height", "2.7", "drawn up dry"),
  MADE (FIT, "2026-03-14"),
  READ (SHOES, "2026-03-15", "shoes.stand_off", "8.5", "shoes from other bar stock"),
  MADE (SHOES, "2026-03-15"),
  READ (HOOKS, "2026-03-21", "hooks.leg", "55.1; 55.5; 55.0; 55.4", "four of eighteen"),
  MADE (HOOKS, "2026-03-21"),
  READ (STRING_UP, "2026-03-28", "bridge.height", "18.0", "higher than planned, to make up for the angle"),
  MADE (STRING_UP, "2026-03-28"),
  MADE (FINISH, "2026-04-06"),
  READ (SET_UP, "2026-04-12", "nut.string_height", "0.45", ""),
  MADE (SET_UP, "2026-04-12"),
  { 0 },
};

static void
measure (RwProject *project, const RwExampleEvent *event)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GArray) readings = rw_readings_read (event->id, event->readings, RW_STYLE_FILE, &error);

  if (readings == NULL
      || !rw_making_measure (project, event->id, (const double *) (const void *) readings->data, readings->len,
                             event->date, event->note, &error))
    g_error ("example: %s: %s", event->id, error->message);
}

void
rw_example_happen (RwProject *project, const RwExampleEvent *events)
{
  for (; events->date != NULL; events++)
    {
      g_autoptr (GError) error = NULL;

      if (events->id != NULL)
        measure (project, events);
      else if (!rw_making_mark (project, events->step, events->date, &error))
        g_error ("example: %s: %s", rw_step_name (events->step), error->message);
    }
}
