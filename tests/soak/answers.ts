import type { z } from '@hono/zod-openapi';
import type { diagram, diagramRow } from '../../api/answers/diagram.ts';

export type Diagram = z.infer<typeof diagram>;
export type DiagramRow = z.infer<typeof diagramRow>;
