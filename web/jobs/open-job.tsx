import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useLocation } from 'wouter';
import { api } from '../api.ts';
import { Section } from '../ui/sheet.tsx';
import { JobForm } from './job-form.tsx';

/** Opens a job and goes to it. */
export function OpenJob({ onLeave }: { onLeave: () => void }) {
  const client = useQueryClient();
  const [, navigate] = useLocation();
  const open = useMutation({
    mutationFn: api.newJob,
    onSuccess: job => {
      void client.invalidateQueries();
      navigate(`/jobs/${job.id}`);
    },
  });
  return (
    <Section title="Open a job">
      <JobForm
        title="Open a job"
        doIt="Open this job"
        busy={open.isPending}
        error={open.error}
        onDo={open.mutate}
        onLeave={onLeave}
      />
    </Section>
  );
}
