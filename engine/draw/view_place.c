#include "draw_parts.h"

/* Where the frames of parts stand on the sheets of the views. */

static RwPoint
mirrored (const RwResult *result, RwPoint p)
{
  return result->used.build_handed == RW_HANDED_LEFT ? (RwPoint){ p.x, -p.y } : p;
}

static RwPoint
risen (RwPoint p, double rise)
{
  return (RwPoint){ p.x, p.y + rise };
}

static RwPoint
in_plan (RwFrame frame, const RwResult *result, RwPoint in)
{
  RwPoint flat;

  if (frame == RW_FRAME_HEADSTOCK)
    return rw_map_head_plan (result, in.x, in.y);
  if (frame != RW_FRAME_BOARD)
    return in;
  flat = rw_place_board (result, in.x, in.y);
  return rw_map_plan (result, flat.x, flat.y);
}

static gboolean
place_in_whole (RwFrame frame, const RwResult *result, RwPoint in, RwPoint *out)
{
  if (frame == RW_FRAME_SIDE)
    *out = risen (in, -rw_side_drop (result));
  else if (frame == RW_FRAME_PLAN || frame == RW_FRAME_BOARD || frame == RW_FRAME_HEADSTOCK)
    *out = mirrored (result, in_plan (frame, result, in));
  else
    return FALSE;
  return TRUE;
}

static gboolean
place_in_heel (RwFrame frame, const RwResult *result, RwPoint in, RwPoint *out)
{
  if (frame == RW_FRAME_SIDE)
    *out = in;
  else if (frame == RW_FRAME_PLAN)
    *out = risen (mirrored (result, in), rw_heel_plan_rise (result));
  else
    return FALSE;
  return TRUE;
}

static gboolean
place_in_section (RwFrame frame, const RwResult *result, RwPoint in, RwPoint *out)
{
  int hand = result->used.build_handed == RW_HANDED_LEFT ? -1 : 1;
  RwPoint origin;

  if (frame != RW_FRAME_SECTION_FIRST && frame != RW_FRAME_SECTION_TWELVE)
    return FALSE;
  origin = rw_section_origin (result, frame == RW_FRAME_SECTION_FIRST ? 0 : 3);
  *out = (RwPoint){ origin.x + hand * in.x, origin.y + in.y };
  return TRUE;
}

gboolean
rw_view_place (RwView view, RwFrame frame, const RwResult *result, RwPoint in, RwPoint *out)
{
  switch (view)
    {
    case RW_VIEW_WHOLE:
      return place_in_whole (frame, result, in, out);
    case RW_VIEW_PLAN:
      return frame != RW_FRAME_SIDE && place_in_whole (frame, result, in, out);
    case RW_VIEW_SIDE:
      *out = in;
      return frame == RW_FRAME_SIDE;
    case RW_VIEW_COURSES:
      *out = mirrored (result, in);
      return frame == RW_FRAME_PLAN;
    case RW_VIEW_POT:
      *out = in;
      return frame == RW_FRAME_RADIAL;
    case RW_VIEW_HEEL:
      return place_in_heel (frame, result, in, out);
    case RW_VIEW_HEADSTOCK:
      *out = mirrored (result, rw_map_head_flat (result, in.x, in.y));
      return frame == RW_FRAME_HEADSTOCK;
    case RW_VIEW_SECTIONS:
      return place_in_section (frame, result, in, out);
    case RW_VIEW_FRETBOARD:
      *out = mirrored (result, in);
      return frame == RW_FRAME_BOARD;
    case RW_VIEW_HOOK:
      *out = in;
      return frame == RW_FRAME_HOOK;
    default:
      return FALSE;
    }
}
