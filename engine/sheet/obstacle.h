/* What lettering should keep clear of, found quickly: pieces of lines and boxes of text in square cells. */
#pragma once

#include "sheet.h"

typedef enum
{
  RW_OBSTACLE_TEXT,
  RW_OBSTACLE_DIMENSION, /* a dimension line, extension line or leader */
  RW_OBSTACLE_WIDE,      /* a wide line of the drawing */
  RW_OBSTACLE_NARROW,
} RwObstacleKind;

typedef struct
{
  RwObstacleKind kind;
  RwPoint        a, b; /* ends of a piece; lower left and upper right corner of a text's box */
} RwObstacle;

typedef struct _RwObstacles RwObstacles;

/* box: where most of them will be; others may lie outside.  cell: a good size of a cell. */
RwObstacles *rw_obstacles_new  (RwBox box, double cell);
void         rw_obstacles_free (RwObstacles *obstacles);

/* A long line is taken apart into pieces no longer than a cell. */
void rw_obstacles_add_line (RwObstacles *obstacles, RwObstacleKind kind, RwPoint a, RwPoint b);
void rw_obstacles_add_text (RwObstacles *obstacles, RwBox box);

/* Calls func for each obstacle that may touch box; one may come several times.  FALSE from func ends it. */
typedef gboolean (*RwObstacleFunc) (const RwObstacle *obstacle, gpointer data);
void rw_obstacles_visit (const RwObstacles *obstacles, RwBox box, RwObstacleFunc func, gpointer data);

/* Likewise for each that may be nearer than `near` to the line from a to b. */
typedef struct
{
  RwPoint a, b;
  double  near;
} RwObstacleLine;

void rw_obstacles_visit_line (const RwObstacles *obstacles,
                              RwObstacleLine     line,
                              RwObstacleFunc     func,
                              gpointer           data);
